package wickbench.stock.room;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.stock.room.StockHome.KEEPER;
import static wickbench.stock.room.StockHome.LOT;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.lot.LotId;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.stock.LotState;

/** What the stock room learns of a lot opens a decision on each Negative that it touches. */
class LotDoubtsTest {
    @TempDir
    private Path folder;

    private StockHome home;

    @BeforeEach
    void open() {
        home = new StockHome(folder.resolve("home")).furnished();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void a_lot_rejected_when_it_is_long_used_up_touches_all_that_was_read_with_it() throws IOException {
        home.fit(LOT, "2026-12-31", 1);
        home.fit(new LotId("HZ-2"), "2026-12-31", 1);
        Kept first = home.after(Duration.ofHours(1)).read(LOT);
        home.read(new LotId("HZ-2"));
        home.after(Duration.ofHours(1));
        home.keeping.count(
                new wickbench.stock.Count(
                        LOT, home.clock.instant(), 0, 0, java.util.Map.of(), Optional.of("lent to the pilot plant")),
                KEEPER);
        home.keeping.usedUp(LOT, KEEPER);
        home.after(Duration.ofDays(30));
        assertThat(touched()).isEmpty();

        home.keeping.reject(LOT, Optional.empty(), "the maker recalls it", KEEPER);

        assertThat(home.lot(LOT).state()).isEqualTo(LotState.REJECTED);
        assertThat(touched()).containsExactly(first.id());
        assertThat(item(first).missing()).containsExactly("lot.rejected");
    }

    @Test
    void a_lot_rejected_from_a_day_on_touches_what_was_read_since() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1)).read(LOT);
        Instant since = home.after(Duration.ofHours(1)).clock.instant();
        Kept after = home.after(Duration.ofHours(1)).read(LOT);

        home.keeping.reject(LOT, Optional.of(since), "the second pouch was torn", KEEPER);

        assertThat(touched()).containsExactly(after.id());
    }

    @Test
    void a_failed_check_of_a_later_delivery_touches_what_came_before_it() {
        home.fit(LOT, "2026-12-31", 1);
        Kept before = home.after(Duration.ofHours(1)).read(LOT);
        home.after(Duration.ofDays(7)).receive(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1)).check(LOT, false, true);

        assertThat(home.keeping.check(LOT, KEEPER).passed()).isFalse();

        // the strips of the check are controls, which stand for no line and no product
        assertThat(touched()).containsExactly(before.id());
    }

    @Test
    void a_warm_weekend_learnt_on_monday_touches_what_was_read_meanwhile_and_nothing_after_the_release() {
        home.fit(LOT, "2026-12-31", 1);
        Kept before = home.after(Duration.ofHours(1)).read(LOT);
        Instant warm = home.after(Duration.ofHours(1)).clock.instant();
        Kept meanwhile = home.after(Duration.ofHours(30)).read(LOT);
        assertThat(meanwhile.reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);

        home.fridges.measured("F1", warm, home.clock.instant(), new BigDecimal("4"), new BigDecimal("19"), KEEPER);
        assertThat(touched()).containsExactly(meanwhile.id()).doesNotContain(before.id());
        assertThat(item(meanwhile).missing()).containsExactly("lot.storage");

        home.after(Duration.ofHours(1));
        home.keeping.release(LOT, Optional.empty(), "the maker allows 48 hours at 25 °C", KEEPER);
        Kept after = home.after(Duration.ofHours(1)).read(LOT);
        assertThat(after.reading().verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(touched()).containsExactly(meanwhile.id());

        home.owed.settle(meanwhile.id(), Owed.DECIDE, "as the release says", new PersonId("qa"), Optional.empty());
        assertThat(touched()).isEmpty();
    }

    @Test
    void somebodys_own_quarantine_is_a_hold_and_no_doubt() {
        home.fit(LOT, "2026-12-31", 1);
        home.after(Duration.ofHours(1)).read(LOT);
        home.keeping.quarantine(LOT, "box was dented", KEEPER);

        assertThat(touched()).isEmpty();
    }

    @Test
    void a_decision_that_shortens_a_lot_to_a_past_day_touches_what_was_read_after_that_local_day() {
        home.fit(LOT, "2026-12-31", 1);
        // 22:30 and 23:30 UTC are the two sides of midnight in Vienna
        home.clock.moveTo(Instant.parse("2026-03-10T22:30:00Z")
                .plus(StockHome.method().timing().develop()));
        home.read(LOT);
        Kept after = home.after(Duration.ofHours(1)).read(LOT);
        home.after(Duration.ofDays(2));
        home.keeping.quarantine(LOT, "the maker shortens it", KEEPER);

        home.keeping.release(LOT, Optional.of(LocalDate.parse("2026-03-10")), "as the maker says", KEEPER);

        assertThat(touched()).containsExactly(after.id());
        assertThat(item(after).missing()).containsExactly("lot.shortened");
    }

    @Test
    void what_is_in_doubt_is_the_same_after_the_tables_were_made_anew() {
        home.fit(LOT, "2026-12-31", 1);
        Kept read = home.after(Duration.ofHours(1)).read(LOT);
        home.keeping.reject(LOT, Optional.empty(), "recalled", KEEPER);
        List<OwedItem> before = home.owed.open();

        home.index.rebuild(Progress.NONE);

        assertThat(home.owed.open()).isEqualTo(before);
        assertThat(touched()).containsExactly(read.id());
    }

    private List<UUID> touched() {
        return home.owed.open().stream()
                .filter(item -> item.step() == Step.DECIDE)
                .map(OwedItem::owes)
                .toList();
    }

    private OwedItem item(Kept result) {
        return home.owed.of(result.id()).stream()
                .filter(item -> item.step() == Step.DECIDE)
                .findFirst()
                .orElseThrow();
    }
}
