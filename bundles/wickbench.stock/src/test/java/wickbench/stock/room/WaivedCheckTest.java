package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.KIT;
import static wickbench.stock.room.StockHome.LOT;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.gate.Answer;
import wickbench.api.gate.Question;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.stock.Happening;
import wickbench.stock.Kit;
import wickbench.stock.Kit.CheckRule;
import wickbench.stock.Lot;
import wickbench.stock.LotState;

/** Who may use a lot without its check: the kit lets somebody waive it, or the site's profile waives it. */
class WaivedCheckTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder).furnished();
        home.keeping.define(strict(), KEEPER);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void neither_kit_nor_profile_lets_anybody_waive() {
        assertThat(home.receive(LOT, "2026-12-31", 1).waivable()).isFalse();
        assertThatThrownBy(() -> home.keeping.waive(LOT, "in a hurry", KEEPER))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("check.not-waivable"));
        assertThat(home.lot(LOT).state()).isEqualTo(LotState.AWAITING_CHECK);
    }

    @Test
    void a_profile_that_waives_the_kit_makes_a_delivery_fit_by_an_entry_of_its_own() {
        home.waiving(Set.of(KIT), Set.of());
        Lot lot = home.receive(LOT, "2026-12-31", 1);

        assertThat(lot.state()).isEqualTo(LotState.FIT);
        assertThat(lot.waived()).isTrue();
        List<Happening> history = home.room.history(LOT);
        assertThat(history).extracting(each -> each.entry().kind()).containsExactly("lot.received", "lot.check-waived");
        assertThat(history.get(1).facts()).containsEntry("reason", "site-profile");
        assertThat(((Answer.Cleared) ask()).facts()).containsEntry("check", "waived");
        home.after(Duration.ofHours(2));
        assertThat(home.read(LOT).reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
    }

    @Test
    void a_profile_that_waives_another_kit_says_nothing_of_this_one() {
        home.waiving(Set.of("Milk demonstration kit, two lines"), Set.of());
        assertThat(home.receive(LOT, "2026-12-31", 1).state()).isEqualTo(LotState.AWAITING_CHECK);
        assertThat(((Answer.Refused) ask()).reasons())
                .extracting(Answer.Reason::code)
                .containsExactly("lot.not-checked-in");
    }

    @Test
    void a_lot_that_came_before_the_profile_waits_and_may_be_waived_by_somebody() {
        home.receive(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(1)).waiving(Set.of(KIT), Set.of());
        assertThat(home.lot(LOT).state()).isEqualTo(LotState.AWAITING_CHECK);

        assertThat(home.keeping.waive(LOT, "as the profile says", KEEPER).state())
                .isEqualTo(LotState.FIT);
    }

    @Test
    void where_a_waiver_is_to_be_signed_the_lot_waits_for_the_signature() {
        home.waiving(Set.of(KIT), Set.of("lot.check-waived"));
        Lot lot = home.receive(LOT, "2026-12-31", 1);
        assertThat(lot.state()).isEqualTo(LotState.AWAITING_CHECK);
        assertThat(lot.waivable()).isTrue();
    }

    @Test
    void another_delivery_is_waived_anew_and_a_check_that_is_read_all_the_same_counts() {
        home.waiving(Set.of(KIT), Set.of()).receive(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(3)).receive(LOT, "2026-12-31", 1);
        assertThat(home.room.history(LOT))
                .extracting(each -> each.entry().kind())
                .containsExactly("lot.received", "lot.check-waived", "lot.received", "lot.check-waived");
        home.after(Duration.ofHours(1)).check(LOT, true, true);
        home.keeping.check(LOT, KEEPER);
        assertThat(home.lot(LOT).waived()).isFalse();
        assertThat(home.lot(LOT).checked()).contains(home.clock.instant());
    }

    @Test
    void a_lot_in_quarantine_stays_there_whatever_is_waived() {
        home.waiving(Set.of(KIT), Set.of()).receive(LOT, "2026-12-31", 1);
        home.keeping.quarantine(LOT, "wet", KEEPER);
        assertThat(home.after(Duration.ofDays(1)).receive(LOT, "2026-12-31", 1).state())
                .isEqualTo(LotState.QUARANTINED);
    }

    private Answer ask() {
        return home.gate.ask(new Question(
                StockHome.method().ref(),
                StockHome.method().route(),
                LOT,
                new PersonId("op-01"),
                Optional.empty(),
                false,
                home.clock.instant()));
    }

    /** The kit of the other tests, which nobody may waive. */
    private static Kit strict() {
        Kit kit = StockHome.kit();
        CheckRule rule = kit.check();
        return new Kit(
                kit.name(),
                kit.gtins(),
                kit.pouches(),
                kit.parts(),
                kit.boxDays(),
                kit.pouchHours(),
                kit.mayMix(),
                kit.storage(),
                new CheckRule(rule.blanks(), rule.lowPositives(), rule.mostWrong(), rule.mostInvalid(), false),
                kit.supply(),
                kit.insertRevision());
    }
}
