package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.method.Route;
import wickbench.stock.Cause;
import wickbench.stock.Clash;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.LotState;

/** Laws of the fold, whatever two stations have told. */
class LotFoldTest {
    private static final LotId LOT = new LotId("HZ-1");
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant END = START.plus(Duration.ofDays(400));
    private static final LocalDate LABEL = LocalDate.parse("2026-12-31");

    @Property
    void the_order_in_which_entries_come_does_not_matter(@ForAll("told") List<Told> told, @ForAll long seed) {
        List<Told> shuffled = new ArrayList<>(told);
        java.util.Collections.shuffle(shuffled, new Random(seed));
        assertThat(fold(shuffled, END)).isEqualTo(fold(told, END));
    }

    @Property
    void nothing_that_is_told_lengthens_a_lot(@ForAll("told") List<Told> told) {
        LocalDate before = LocalDate.MAX;
        for (int days = 0; days <= 400; days += 20) {
            Optional<Lot> lot = fold(told, START.plus(Duration.ofDays(days)));
            if (lot.isPresent()) {
                assertThat(lot.get().effective()).isBeforeOrEqualTo(LABEL).isBeforeOrEqualTo(before);
                before = lot.get().effective();
            }
        }
    }

    @Property
    void no_count_falls_below_zero_and_what_is_missing_is_told(@ForAll("told") List<Told> told) {
        fold(told, END)
                .ifPresent(lot -> assertThat(lot.parts()).allSatisfy(part -> {
                    assertThat(part.sealed()).isGreaterThanOrEqualTo(BigDecimal.ZERO);
                    assertThat(part.open()).isGreaterThanOrEqualTo(BigDecimal.ZERO);
                    assertThat(part.missing()).isGreaterThanOrEqualTo(BigDecimal.ZERO);
                    assertThat(part.left().signum() == 0 || part.missing().signum() == 0)
                            .isTrue();
                }));
    }

    @Property
    void a_quarantine_stands_until_a_decision_names_it(@ForAll("told") List<Told> told) {
        fold(told, END)
                .filter(lot -> lot.state().kept())
                .ifPresent(lot -> assertThat(lot.state().quarantined())
                        .isEqualTo(!lot.quarantines().isEmpty()));
    }

    @Test
    void a_release_does_not_lift_a_quarantine_that_it_did_not_know() {
        Told first = told("a", 1, new LotEvent.Quarantined(LOT, day(2), Cause.WARM, "F1", Optional.empty()));
        Told release = told("a", 2, new LotEvent.Released(LOT, day(5), List.of(first.id()), Optional.empty(), "fine"));
        // another station's logger, read later, tells of an earlier night
        Told late = told("b", 7, new LotEvent.Quarantined(LOT, day(1), Cause.GAP, "F2", Optional.empty()));
        assertThat(fold(List.of(received(), waived(), first, release), END)
                        .orElseThrow()
                        .state())
                .isEqualTo(LotState.FIT);
        Lot held =
                fold(List.of(late, release, first, waived(), received()), END).orElseThrow();
        assertThat(held.state()).isEqualTo(LotState.QUARANTINED);
        assertThat(held.quarantines()).extracting(each -> each.cause()).containsExactly(Cause.GAP);
    }

    @Test
    void what_cannot_follow_is_a_clash_and_the_more_cautious_stands() {
        Told destroyed = told("a", 3, new LotEvent.Destroyed(LOT, day(3), "spilt"));
        Told released = told("b", 4, new LotEvent.Checked(LOT, day(4), new LotCheck(2, 2, 0, 0, true, List.of())));
        Lot lot = fold(List.of(received(), released, destroyed), END).orElseThrow();
        assertThat(lot.state()).isEqualTo(LotState.DESTROYED);
        assertThat(lot.clashes())
                .extracting(Clash::claimed, Clash::stands)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("pass", "destroyed"));
    }

    @Test
    void a_clash_that_somebody_settled_is_none_any_more() {
        Told destroyed = told("a", 3, new LotEvent.Destroyed(LOT, day(3), "mixed up"));
        Told passed = told("b", 4, new LotEvent.Checked(LOT, day(4), new LotCheck(2, 2, 0, 0, true, List.of())));
        Told settled = told("b", 5, new LotEvent.Settled(LOT, day(6), Set.of(destroyed.entry())));
        List<Told> all = List.of(settled, received(), passed, destroyed);
        assertThat(fold(all, day(5)).orElseThrow().state()).isEqualTo(LotState.DESTROYED);
        Lot lot = fold(all, day(7)).orElseThrow();
        assertThat(lot.state()).isEqualTo(LotState.FIT);
        assertThat(lot.clashes()).isEmpty();
    }

    @Test
    void the_last_strip_taken_on_two_stations_is_a_clash() {
        Told count = told("a", 3, new LotEvent.Counted(LOT, day(2), 0, 1, Map.of(), Map.of(), Optional.of("rest")));
        List<Uses.Gone> read = List.of(new Uses.Gone(ref("b", 9), day(5)), new Uses.Gone(ref("a", 8), day(4)));
        Uses two = new Uses() {
            @Override
            public Map<Route, Long> between(Instant after, Instant upTo) {
                return Map.of(Route.SWAB_DRY, 2L);
            }

            @Override
            public List<Gone> newest(Instant upTo, long most) {
                return read;
            }
        };
        Lot lot = fold(List.of(received(), waived(), count), two, END).orElseThrow();
        assertThat(lot.strips().left()).isZero();
        assertThat(lot.clashes())
                .extracting(Clash::code, Clash::entry)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("strips", ref("b", 9)));
    }

    @Test
    void a_strip_taken_on_one_station_and_read_on_the_other_is_one_too_and_a_count_ends_it() {
        Told count = told("a", 3, new LotEvent.Counted(LOT, day(2), 0, 1, Map.of(), Map.of(), Optional.of("rest")));
        Told took = told("a", 4, new LotEvent.Taken(LOT, day(4), "strip", BigDecimal.ONE, "training"));
        Told later = told("b", 7, new LotEvent.Taken(LOT, day(5), "strip", BigDecimal.ONE, "torn"));
        Uses none = reads(0);
        Lot lot = fold(List.of(received(), waived(), count, took, later), none, END)
                .orElseThrow();
        assertThat(lot.strips().missing()).isEqualByComparingTo("1");
        assertThat(lot.clashes()).extracting(Clash::entry).containsExactly(ref("b", 7));

        Told same = told("a", 7, new LotEvent.Taken(LOT, day(5), "strip", BigDecimal.ONE, "torn"));
        assertThat(fold(List.of(received(), waived(), count, took, same), none, END)
                        .orElseThrow()
                        .clashes())
                .isEmpty();

        Told again = told("a", 9, new LotEvent.Counted(LOT, day(6), 0, 0, Map.of(), Map.of(), Optional.of("none")));
        assertThat(fold(List.of(received(), waived(), count, took, later, again), none, END)
                        .orElseThrow()
                        .clashes())
                .isEmpty();
    }

    private static Uses reads(long strips) {
        return new Uses() {
            @Override
            public Map<Route, Long> between(Instant after, Instant upTo) {
                return Map.of(Route.SWAB_DRY, strips);
            }

            @Override
            public List<Gone> newest(Instant upTo, long most) {
                return List.of();
            }
        };
    }

    @Provide
    Arbitrary<List<Told>> told() {
        Arbitrary<Instant> at = Arbitraries.integers().between(0, 390).map(LotFoldTest::day);
        List<UUID> ids = java.util.stream.IntStream.range(0, 12)
                .mapToObj(LotFoldTest::id)
                .toList();
        Arbitrary<LotEvent> event = at.flatMap(when -> Arbitraries.of(
                new LotEvent.Quarantined(LOT, when, Cause.WARM, "F1", Optional.empty()),
                new LotEvent.Released(LOT, when, ids, Optional.of(LABEL.minusDays(30)), "fine"),
                new LotEvent.Released(LOT, when, ids.subList(0, 4), Optional.empty(), "fine"),
                new LotEvent.Checked(LOT, when, new LotCheck(2, 2, 0, 0, true, List.of())),
                new LotEvent.Waived(LOT, when, "why"),
                new LotEvent.Opened(LOT, when, Map.of()),
                new LotEvent.Taken(LOT, when, "strip", BigDecimal.valueOf(7), "training"),
                new LotEvent.Counted(LOT, when, 1, 2, Map.of(), Map.of(), Optional.empty()),
                new LotEvent.Destroyed(LOT, when, "bad"),
                new LotEvent.UsedUp(LOT, when),
                received(when)));
        return Combinators.combine(
                        event.list().ofMaxSize(12),
                        Arbitraries.of("a", "b").list().ofSize(12))
                .as((events, stations) -> {
                    List<Told> told = new ArrayList<>();
                    for (int i = 0; i < events.size(); i++) {
                        told.add(new Told(
                                ref(stations.get(i), i), id(i), events.get(i).at(), false, events.get(i)));
                    }
                    return told;
                });
    }

    private static Optional<Lot> fold(List<Told> told, Instant at) {
        return fold(
                told,
                new Uses() {
                    @Override
                    public Map<Route, Long> between(Instant after, Instant upTo) {
                        return Map.of(Route.SWAB_DRY, 3L);
                    }

                    @Override
                    public List<Gone> newest(Instant upTo, long most) {
                        return List.of(new Gone(ref("a", 99), START));
                    }
                },
                at);
    }

    private static Optional<Lot> fold(List<Told> told, Uses uses, Instant at) {
        KitBook kits = new KitBook(List.of(new KitBook.Defined(START, StockHome.kit())));
        return new LotFold(new Terms(kits, Inserts.NONE, Waiving.NONE, ZoneId.of("Europe/Vienna")))
                .at(LOT, told, uses, at);
    }

    private static Told received() {
        return told("a", 0, received(START));
    }

    private static LotEvent received(Instant at) {
        return new LotEvent.Received(
                LOT,
                at,
                StockHome.KIT,
                LABEL,
                1,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("F1"),
                List.of(),
                Optional.empty());
    }

    private static Told waived() {
        return told("a", 1, new LotEvent.Waived(LOT, START.plusSeconds(60), "why"));
    }

    private static Told told(String station, long seq, LotEvent event) {
        return new Told(ref(station, seq), id((int) (100 * station.charAt(0) + seq)), event.at(), false, event);
    }

    private static EntryRef ref(String station, long seq) {
        return new EntryRef(new StationId(station), seq);
    }

    private static UUID id(int number) {
        return new UUID(0, number);
    }

    private static Instant day(int day) {
        return START.plus(Duration.ofDays(day));
    }
}
