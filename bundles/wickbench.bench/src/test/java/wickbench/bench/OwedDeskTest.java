package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.bench.BenchHome.WRITER;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.owed.VisualCheck;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.Visual;
import wickbench.testing.Meets;

class OwedDeskTest {
    private static final String POSITIVE_ROW = GOOD_ROW.replace("control hook", "control hook ~test");
    private static final String PLACE = "Line 2 filler";

    @TempDir
    private Path folder;

    private BenchHome home;

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    @Meets("21 CFR 117.150(a)")
    void what_a_positive_owes_stays_until_each_part_is_done() {
        UUID positive = record(POSITIVE_ROW).id();
        assertThat(steps()).containsExactly(Step.HOLD, Step.RE_CLEAN, Step.RE_TEST);

        home.owed.cleaned(clean("2026-03-02T07:00:00Z"), WRITER);
        home.owed.neighbours(positive, List.of(), WRITER);
        assertThat(steps()).containsExactly(Step.HOLD, Step.RE_TEST);

        record(GOOD_ROW.replace("S1", "S2").replace("T07:3", "T09:3").replace("T07:0", "T09:0"));
        home.owed.settle(positive, Owed.HOLD, "batch destroyed", WRITER, Optional.empty());
        assertThat(steps()).isEmpty();
        assertThat(home.owed.of(positive)).hasSize(3).allMatch(OwedItem::done);
    }

    @Test
    void a_clean_or_a_look_told_twice_stands_once() {
        VisualCheck soiled =
                new VisualCheck(PLACE, Optional.empty(), Visual.SOILED, WRITER, Instant.parse("2026-03-02T06:00:00Z"));
        home.owed.looked(soiled, WRITER);
        long before = home.entries();
        home.owed.looked(soiled, WRITER);
        assertThat(home.entries()).isEqualTo(before);
        assertThat(steps()).containsExactly(Step.RE_CLEAN);

        CleanDone clean = clean("2026-03-02T07:00:00Z");
        assertThat(home.owed.cleaned(clean, WRITER)).isEqualTo(home.owed.cleaned(clean, WRITER));
        assertThat(steps()).isEmpty();
    }

    @Test
    @Meets({"21 CFR 117.150(a)", "ISO 22000 8.8.1"})
    void nobody_decides_on_a_strip_that_they_read() {
        UUID positive = record(POSITIVE_ROW).id();

        assertThatThrownBy(() ->
                        home.owed.settle(positive, Owed.HOLD, "it is fine", new PersonId("ana"), Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("owed.own-reading"));
        assertThat(steps()).contains(Step.HOLD);
    }

    @Test
    @Meets("ISO/IEC 17025 7.10")
    void what_is_not_owed_cannot_be_settled_and_has_no_neighbours() {
        UUID negative = record(GOOD_ROW).id();

        assertThatThrownBy(() -> home.owed.settle(negative, Owed.HOLD, "why", WRITER, Optional.empty()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("owed.unknown"));
        assertThatThrownBy(() -> home.owed.neighbours(negative, List.of(), WRITER))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("owed.unknown"));
    }

    @Test
    @Meets("ISO 22000 8.9.2, 8.9.4, 10.1")
    void a_corrected_reading_owes_what_it_says_now_and_a_hold_for_ever() {
        String late = GOOD_ROW.replace("T07:37:30", "T07:47:30");
        UUID invalid = record(late).id();
        assertThat(steps()).containsExactly(Step.REPEAT_SAME_EXTRACT);
        home.door.correct(invalid, Sheets.read(HEADER + GOOD_ROW).orRefuse().get(0), "misread the clock", WRITER);
        assertThat(steps()).isEmpty();

        home.door.correct(invalid, Sheets.read(HEADER + POSITIVE_ROW).orRefuse().get(0), "overlooked", WRITER);
        assertThat(steps()).contains(Step.HOLD);
    }

    @Test
    @Meets("ISO/IEC 17025 7.7.1")
    void a_control_that_failed_in_an_earlier_run_bars_the_negatives_of_the_next() {
        String control = HEADER.replace("seen\n", "seen,control\n");
        record(control, GOOD_ROW.replace("S1", "C1").replace("control hook\n", "control hook,low-positive\n"));
        String later = GOOD_ROW.replace("T07:3", "T09:3").replace("T07:0", "T09:0");

        assertThat(record(later).reading().verdict().findings())
                .extracting(finding -> finding.rule())
                .contains("control.failed");

        record(
                control,
                GOOD_ROW.replace("S1", "C2")
                        .replace("T07:3", "T10:3")
                        .replace("T07:0", "T10:0")
                        .replace("control hook\n", "control hook test,low-positive\n"));
        String last = GOOD_ROW.replace("T07:3", "T11:3").replace("T07:0", "T11:0");
        assertThat(record(last).reading().verdict().findings())
                .extracting(finding -> finding.rule())
                .doesNotContain("control.failed");
    }

    private List<Step> steps() {
        return home.owed.open().stream().map(OwedItem::step).toList();
    }

    private Kept record(String row) {
        return record(HEADER, row);
    }

    private Kept record(String header, String row) {
        return home.door.record(Sheets.read(header + row).orRefuse(), WRITER).get(0);
    }

    private static CleanDone clean(String ended) {
        return new CleanDone(PLACE, Optional.empty(), "foam and rinse", WRITER, Instant.parse(ended));
    }
}
