package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Question;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Severity;
import wickbench.stock.Delivery;
import wickbench.stock.Device;
import wickbench.stock.Kit;
import wickbench.testing.Meets;

class StockGateTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void nothing_was_kept_yet_so_nobody_can_say() {
        assertThat(ask(Optional.empty())).isEqualTo(new Answer.NotChecked("stock"));
    }

    @Test
    void a_lot_that_never_came_is_refused_once_others_did() {
        home.receive(new LotId("HZ-9"), "2026-12-31", 1);
        assertThat(codes(Optional.empty())).containsExactly("lot.not-checked-in");
    }

    @Test
    void an_unchecked_lot_is_refused_but_for_its_check() {
        home.receive(LOT, "2026-12-31", 1);
        assertThat(codes(Optional.empty())).containsExactly("lot.not-checked-in");
        assertThat(codes(Optional.of(Reason.LOT_CHECK))).isEmpty();
    }

    @Test
    void a_fit_lot_is_cleared_with_what_the_answer_rests_on() {
        home.fit(LOT, "2026-12-31", 1);
        assertThat(((Answer.Cleared) ask(Optional.empty())).facts())
                .containsEntry("state", "fit")
                .containsEntry("effective_expiry", "2026-12-31")
                .containsEntry("strips_left", "16");
    }

    @Test
    @Meets("21 CFR 117.165(a)(1)")
    void equipment_out_of_calibration_is_a_caution_as_of_then_and_refuses_nothing() {
        home.fit(LOT, "2026-12-31", 1);
        calibrated("PT-1", "2025-01-01", "2026-03-02");
        calibrated("BL-1", "2025-06-01", "2026-06-01");
        calibrated("TM-1", "2025-01-01", "2026-01-01");
        home.keeping.retire("TM-1", "broken", KEEPER);
        home.after(Duration.ofDays(2));
        assertThat(((Answer.Refused) ask(Optional.empty())).reasons())
                .containsExactly(new Answer.Reason("equipment.overdue", "PT-1 due 2026-03-02", "calibrated"));
        Instant overdue = home.clock.instant();
        Kept read = home.read(LOT);
        assertThat(read.reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(read.reading().verdict().findings())
                .extracting(Finding::rule, Finding::severity)
                .contains(tuple("equipment.overdue", Severity.CAUTION));

        home.after(Duration.ofDays(1));
        calibrated("PT-1", "2026-03-05", "2027-03-05");
        assertThat(codes(Optional.empty())).isEmpty();
        // what was measured before is not made good by it
        assertThat(codes(home.gate.ask(question(Optional.empty(), overdue)))).containsExactly("equipment.overdue");
    }

    @Test
    void the_last_day_of_a_calibration_is_a_local_one_and_included() {
        home.fit(LOT, "2026-12-31", 1);
        calibrated("PT-1", "2025-01-01", "2026-03-10");
        assertThat(codesAt("2026-03-10T22:59:59Z")).isEmpty();
        assertThat(codesAt("2026-03-10T23:00:00Z")).containsExactly("equipment.overdue");
    }

    @Test
    void a_lot_of_another_kit_than_the_methods_is_refused() {
        Kit known = StockHome.kit();
        Kit other = new Kit(
                "Milk demonstration kit",
                List.of(),
                known.pouches(),
                known.parts(),
                Optional.empty(),
                Optional.empty(),
                true,
                known.storage(),
                known.check(),
                known.supply(),
                Optional.empty());
        home.keeping.define(other, KEEPER);
        Delivery box = home.delivery(LOT, "2026-12-31", 1);
        home.keeping.receive(
                new Delivery(
                        other.name(),
                        box.lot(),
                        box.expiry(),
                        box.boxes(),
                        box.at(),
                        box.insert(),
                        box.serial(),
                        box.produced(),
                        box.place(),
                        box.companions(),
                        box.scan()),
                KEEPER);
        home.keeping.waive(LOT, "for the test", KEEPER);

        assertThat(((Answer.Refused) ask(Optional.empty())).reasons())
                .containsExactly(new Answer.Reason("lot.other-kit", "Milk demonstration kit", StockHome.KIT));
    }

    private void calibrated(String device, String on, String due) {
        home.keeping.calibrated(
                new Device(
                        device,
                        Device.Type.PIPETTE,
                        "device " + device,
                        LocalDate.parse(on),
                        LocalDate.parse(due),
                        Optional.empty(),
                        Optional.empty()),
                KEEPER);
    }

    @Test
    void the_label_holds_to_the_end_of_its_last_local_day() {
        home.fit(LOT, "2026-03-10", 1);
        // 22:59 and 23:00 UTC are the two sides of midnight in Vienna
        assertThat(codesAt("2026-03-10T22:59:59Z")).isEmpty();
        assertThat(codesAt("2026-03-10T23:00:00Z")).containsExactly("lot.expired");
    }

    @Test
    void quarantine_storage_age_and_an_empty_count_each_have_their_code() {
        home.fit(LOT, "2026-12-31", 1);
        home.keeping.open(LOT, home.clock.instant(), Map.of(), KEEPER);
        home.after(Duration.ofHours(73));
        assertThat(codes(Optional.empty())).containsExactly("lot.pouch-age");
        home.keeping.quarantine(LOT, "dropped", KEEPER);
        assertThat(codes(Optional.empty())).contains("lot.quarantined");
        home.keeping.destroy(LOT, "dropped", KEEPER);
        assertThat(codes(Optional.empty())).contains("lot.quarantined");
    }

    @Test
    void a_fact_of_yesterday_is_recorded_with_what_was_true_then() {
        home.fit(LOT, "2026-03-03", 1);
        home.after(Duration.ofHours(30));
        // this morning the lot had one day left
        Kept inDate = home.read(LOT);
        assertThat(inDate.reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        var yesterday = home.reading(LOT, false, Reason.AFTER_CLEANING, Optional.empty());
        home.after(Duration.ofDays(1));
        Kept late = home.record(yesterday);
        assertThat(late.reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        Kept expired = home.read(LOT);
        assertThat(expired.reading().verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(expired.reading().verdict().findings())
                .extracting(Finding::rule)
                .contains("lot.expired");
    }

    private Answer ask(Optional<Reason> reason) {
        return home.gate.ask(question(reason, home.clock.instant()));
    }

    private List<String> codes(Optional<Reason> reason) {
        return codes(ask(reason));
    }

    private List<String> codesAt(String at) {
        return codes(home.gate.ask(question(Optional.empty(), Instant.parse(at))));
    }

    private static List<String> codes(Answer answer) {
        return answer instanceof Answer.Refused refused
                ? refused.reasons().stream().map(Answer.Reason::code).toList()
                : List.of();
    }

    private static Question question(Optional<Reason> reason, Instant at) {
        return new Question(
                StockHome.method().ref(),
                StockHome.method().route(),
                LOT,
                new PersonId("op-01"),
                Optional.empty(),
                reason.isPresent(),
                at);
    }
}
