package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.math.BigDecimal;
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
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.lot.LotId;
import wickbench.api.reading.Outcome;
import wickbench.stock.Companion;
import wickbench.stock.Count;
import wickbench.stock.Delivery;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.LotState;
import wickbench.testing.Meets;

class LotLifeTest {
    private static final LotId OTHER = new LotId("HZ-2");

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
    @Meets("ISO/IEC 17025 6.4.4, 6.6")
    void a_delivery_awaits_its_check_and_is_fit_after_it() {
        assertThat(home.receive(LOT, "2026-12-31", 2).state()).isEqualTo(LotState.AWAITING_CHECK);
        home.after(Duration.ofHours(1)).check(LOT, true, true);
        LotCheck check = home.keeping.check(LOT, KEEPER);
        assertThat(check)
                .extracting(LotCheck::passed, LotCheck::blanks, LotCheck::lowPositives)
                .containsExactly(true, 2, 2);
        assertThat(home.lot(LOT).state()).isEqualTo(LotState.FIT);
        assertThat(home.lot(LOT).strips().left()).isEqualByComparingTo("36");
    }

    @Test
    void too_few_strips_decide_nothing_and_wrong_ones_reject() {
        home.receive(LOT, "2026-12-31", 1);
        assertThatThrownBy(() -> home.keeping.check(LOT, KEEPER))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("check.too-few"));
        home.after(Duration.ofHours(1)).check(LOT, false, true);
        assertThat(home.keeping.check(LOT, KEEPER).passed()).isFalse();
        assertThat(home.lot(LOT).state()).isEqualTo(LotState.REJECTED);
        assertThat(home.lot(LOT).clashes()).isEmpty();
    }

    @Test
    @Meets("ISO/IEC 17025 6.4.4, 6.6")
    void every_delivery_is_checked() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(1));
        assertThat(home.receive(LOT, "2026-12-31", 1).state()).isEqualTo(LotState.AWAITING_CHECK);
        assertThatThrownBy(() -> home.keeping.check(LOT, KEEPER)).isInstanceOf(Refusal.class);
    }

    @Test
    void a_waiver_says_why_and_only_where_the_kit_allows_it() {
        home.receive(LOT, "2026-12-31", 1);
        assertThatThrownBy(() -> home.keeping.waive(LOT, " ", KEEPER)).isInstanceOf(BadInput.class);
        assertThat(home.keeping.waive(LOT, "same lot as last week", KEEPER).state())
                .isEqualTo(LotState.FIT);
    }

    @Test
    void strips_and_liquids_are_counted_from_what_was_read() {
        home.fit(LOT, "2026-12-31", 1);
        home.keeping.open(LOT, home.clock.instant(), Map.of(), KEEPER);
        home.after(Duration.ofMinutes(20)).read(LOT);
        Lot lot = home.lot(LOT);
        assertThat(lot.strips().left()).isEqualByComparingTo("15");
        assertThat(lot.sealedPouches()).isEqualTo(3);
        assertThat(lot.parts().get(1).left()).isEqualByComparingTo(new BigDecimal("32.5"));
        assertThat(lot.parts().get(2).left()).isEqualByComparingTo("15");
        assertThat(lot.unrecordedPouches()).isZero();
    }

    @Test
    void a_pouch_that_nobody_opened_is_told() {
        home.fit(LOT, "2026-12-31", 1);
        Lot lot = home.lot(LOT);
        assertThat(lot.unrecordedPouches()).isEqualTo(1);
        assertThat(lot.pouch()).isEmpty();
    }

    @Test
    @Meets("ISO/IEC 17025 6.4.8")
    void the_effective_day_is_the_earliest_and_never_later() {
        home.fit(LOT, "2026-12-31", 1);
        home.keeping.open(LOT, home.clock.instant(), Map.of(), KEEPER);
        assertThat(home.lot(LOT))
                .extracting(Lot::effective, Lot::why)
                .containsExactly(LocalDate.parse("2026-05-01"), "opened");
        home.keeping.quarantine(LOT, "stood in the sun", KEEPER);
        assertThatThrownBy(() -> home.keeping.release(LOT, Optional.of(LocalDate.parse("2026-05-02")), "fine", KEEPER))
                .isInstanceOf(Refusal.class);
        Lot released = home.keeping.release(LOT, Optional.of(LocalDate.parse("2026-04-10")), "shortened", KEEPER);
        assertThat(released)
                .extracting(Lot::effective, Lot::why, Lot::state)
                .containsExactly(LocalDate.parse("2026-04-10"), "decided", LotState.FIT);
    }

    @Test
    void liquids_end_their_strips_where_they_may_not_be_mixed() {
        Delivery box = home.delivery(LOT, "2026-12-31", 1);
        home.keeping.receive(
                new Delivery(
                        box.kit(),
                        box.lot(),
                        box.expiry(),
                        1,
                        box.at(),
                        Optional.of("4"),
                        Optional.empty(),
                        Optional.empty(),
                        box.place(),
                        List.of(new Companion("buffer", new LotId("B-9"), Optional.of(LocalDate.parse("2026-08-31")))),
                        Optional.empty()),
                KEEPER);
        assertThat(home.lot(LOT).effective()).isEqualTo(LocalDate.parse("2026-08-31"));
        assertThat(home.lot(LOT).otherInsert()).isTrue();
        assertThatThrownBy(
                        () -> home.keeping.open(LOT, home.clock.instant(), Map.of("buffer", new LotId("B-10")), KEEPER))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("lot.mixed"));
        assertThat(home.keeping
                        .open(LOT, home.clock.instant(), Map.of("buffer", new LotId("B-9")), KEEPER)
                        .opened())
                .isPresent();
    }

    @Test
    void a_count_that_differs_says_why_and_counts_from_then() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1));
        Count wrong = new Count(LOT, home.clock.instant(), 3, 0, Map.of(), Optional.empty());
        assertThatThrownBy(() -> home.keeping.count(wrong, KEEPER)).isInstanceOf(BadInput.class);
        Count explained =
                new Count(LOT, home.clock.instant(), 2, 4, Map.of(), Optional.of("two strips fell on the floor"));
        assertThat(home.keeping.count(explained, KEEPER).strips().left()).isEqualByComparingTo("14");
        home.after(Duration.ofHours(1)).read(LOT);
        assertThat(home.lot(LOT).strips().left()).isEqualByComparingTo("13");
    }

    @Test
    void more_used_than_counted_is_never_silent() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1));
        home.keeping.count(new Count(LOT, home.clock.instant(), 0, 1, Map.of(), Optional.of("lost a box")), KEEPER);
        home.after(Duration.ofHours(1)).read(LOT);
        assertThat(home.read(LOT).reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(home.lot(LOT).strips().left()).isEqualByComparingTo("0");
        assertThat(home.lot(LOT).strips().missing()).isEqualByComparingTo("1");
        assertThat(home.room.due(home.clock.instant(), 0))
                .anyMatch(due -> due.subject().equals("HZ-1") && due.what() == wickbench.stock.Due.What.COUNT);
    }

    @Test
    void of_two_that_take_the_last_strip_one_is_refused() throws Exception {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1));
        home.keeping.count(new Count(LOT, home.clock.instant(), 0, 1, Map.of(), Optional.of("lost a box")), KEEPER);
        int clients = 10;
        var pool = java.util.concurrent.Executors.newFixedThreadPool(clients);
        var tries = new java.util.ArrayList<java.util.concurrent.Future<Boolean>>();
        for (int i = 0; i < clients; i++) {
            tries.add(pool.submit(() -> {
                try {
                    home.keeping.take(LOT, "strip", BigDecimal.ONE, "training", KEEPER);
                    return true;
                } catch (Refusal none) {
                    return false;
                }
            }));
        }
        int taken = 0;
        for (var each : tries) {
            taken += each.get() ? 1 : 0;
        }
        pool.shutdown();
        assertThat(taken).isEqualTo(1);
        assertThat(home.lot(LOT).strips().left()).isZero();
        assertThat(home.lot(LOT).strips().missing()).isZero();
    }

    @Test
    void first_expired_comes_first() {
        home.fit(LOT, "2026-12-31", 1);
        home.fit(OTHER, "2026-06-30", 1);
        assertThat(home.room.fitFor(StockHome.KIT, home.clock.instant()))
                .extracting(facts -> facts.lot().value())
                .containsExactly("HZ-2", "HZ-1");
    }

    @Test
    @Meets({"ISO/IEC 17025 6.4.9", "ISO/IEC 17025 7.10", "ISO 22000 8.3"})
    void a_lot_is_traced_both_ways_and_rejecting_it_later_touches_its_results() {
        home.fit(LOT, "2026-12-31", 1);
        var kept = home.after(Duration.ofHours(1)).read(LOT);
        assertThat(home.room.trace(LOT).uses()).hasSize(5);
        assertThat(home.room.behind(kept.id()).orElseThrow().lot().orElseThrow().id())
                .isEqualTo(LOT);
        assertThat(home.keeping
                        .reject(LOT, Optional.empty(), "recalled by its maker", KEEPER)
                        .state())
                .isEqualTo(LotState.REJECTED);
    }

    @Test
    void what_was_read_before_the_lot_was_received_here_counts_too() {
        home.read(LOT);
        assertThat(home.room.unreceived())
                .extracting(each -> each.lot().value())
                .containsExactly("HZ-1");
        Delivery late = home.delivery(LOT, "2026-12-31", 1);
        home.after(Duration.ofDays(3));
        home.keeping.receive(
                new Delivery(
                        late.kit(),
                        late.lot(),
                        late.expiry(),
                        1,
                        Instant.parse("2026-03-01T08:00:00Z"),
                        Optional.of("3"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Optional.empty()),
                KEEPER);
        assertThat(home.lot(LOT).strips().left()).isEqualByComparingTo("19");
        assertThat(home.room.unreceived()).isEmpty();
    }

    @Test
    void the_index_rebuilt_equals_the_index_kept() {
        home.fit(LOT, "2026-12-31", 1);
        home.keeping.quarantine(LOT, "dropped", KEEPER);
        Lot before = home.lot(LOT);
        home.index.rebuild(wickbench.api.progress.Progress.NONE);
        assertThat(home.lot(LOT)).isEqualTo(before);
    }
}
