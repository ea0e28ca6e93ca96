package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Seen;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;
import wickbench.journal.Site.Machine;
import wickbench.testing.Meets;

/** Several machines, one shared folder: what each gets of the others. */
class StationsTest {
    @TempDir
    Path root;

    private Site site;

    @BeforeEach
    void found() {
        site = new Site(root);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void each_station_gets_the_others_bytes_and_hears_of_their_entries() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        stock.note(2);
        site.settle();
        assertThat(bench.journal().stations()).containsExactly(new StationId("bench"), new StationId("stock"));
        assertThat(stock.journal().stations()).containsExactly(new StationId("stock"), new StationId("bench"));
        assertThat(bench.entries("stock")).isEqualTo(stock.entries("stock").subList(0, (int) bench.size("stock")));
        assertThat(stock.heard())
                .anyMatch(entry -> entry.ref().station().value().equals("bench")
                        && entry.kind().equals("note.written"));
        assertThat(stock.journal().line(bench.entries("bench").get(1).ref()))
                .isEqualTo(bench.journal().line(bench.entries("bench").get(1).ref()));
    }

    @Test
    void a_checkpoint_of_each_station_is_at_hand() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.note(1);
        site.settle();
        StationId other = new StationId("stock");
        Checkpoint theirs = bench.journal().checkpoint(other).orElseThrow();
        assertThat(theirs.station()).isEqualTo(other);
        assertThat(theirs.size()).isEqualTo(bench.size("stock"));
        assertThat(theirs.note()).startsWith("wickbench").contains("\n" + theirs.size() + "\n");
        Optional<Checkpoint> own = bench.journal().checkpoint(new StationId("bench"));
        assertThat(own).isEqualTo(bench.journal().checkpoint());
        assertThat(bench.journal().checkpoint(new StationId("nowhere"))).isEmpty();
    }

    @Test
    void what_others_have_is_still_there_without_the_share_and_after_a_restart() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        site.cut();
        stock.reopen();
        assertThat(stock.entries("bench", "note.written")).hasSize(1);
        Sharing cut = stock.exchange();
        assertThat(cut.cutOff()).isPresent();
        stock.note(2);
        Instant since = cut.cutOff().orElseThrow();
        assertThat(stock.exchange().cutOff()).contains(since);
        site.mend();
        site.settleUntil(() -> bench.entries("stock", "note.written").size() == 1);
        assertThat(stock.exchange().cutOff()).isEmpty();
    }

    @Test
    void a_key_is_pinned_in_the_own_journal_once() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.note(1);
        site.settle();
        bench.reopen();
        site.settle();
        assertThat(bench.entries("bench", "station.pinned")).hasSize(1);
        assertThat(bench.entries("bench", "station.pinned").get(0).body())
                .isEqualTo(Pin.of(Beginning.of(new Layout(stock.folder()).station(new StationId("stock")))
                                .founded()
                                .orElseThrow())
                        .body());
    }

    @Test
    void a_station_says_what_it_had_seen_before_it_records_and_only_then() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        bench.note(1);
        site.settle();
        site.settle();
        long quiet = stock.size("stock");
        site.settle();
        assertThat(stock.size("stock")).isEqualTo(quiet);
        stock.note(2);
        List<Seen> seen = Seen.of(stock.entries("stock", "station.seen")
                .get(stock.entries("stock", "station.seen").size() - 1));
        assertThat(seen)
                .containsExactly(new Seen(
                        new StationId("bench"),
                        stock.size("bench"),
                        stock.entries("bench")
                                .get((int) stock.size("bench") - 1)
                                .leaf()));
        assertThat(stock.entries("stock").get((int) stock.size("stock") - 2).kind())
                .isEqualTo("station.seen");
    }

    @Test
    void a_clock_in_2099_and_set_back_hinders_nobody() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.journal().close();
        stock.open(Instant.parse("2099-01-01T00:00:00Z"));
        stock.note(1);
        stock.journal().close();
        stock.open(Instant.parse("2026-03-01T00:00:00Z"));
        stock.note(2);
        site.settle();
        assertThat(bench.entries("stock", "note.written")).hasSize(2);
        assertThat(bench.exchange().notices())
                .anyMatch(notice -> notice.startsWith("The clock was set back: entry stock:"));
        assertThat(bench.entries("stock").stream()
                        .map(entry -> entry.ref().seq())
                        .toList())
                .isSorted();
    }

    @Test
    @Meets("EU GMP Annex 11 16")
    void a_station_cut_off_for_three_days_comes_back_with_all_that_both_have_recorded() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        site.cut();
        Instant day = Instant.parse("2026-03-02T06:00:00Z");
        for (int days = 0; days < 3; days++) {
            stock.journal().close();
            stock.open(day.plusSeconds(86_400L * days));
            stock.exchange();
            stock.note(days);
            bench.note(10 + days);
        }
        List<Entry> before = stock.entries("stock");
        site.mend();
        site.settleUntil(() -> bench.entries("stock", "note.written").size() == 3
                && stock.entries("bench", "note.written").size() == 3);
        assertThat(bench.entries("stock").subList(0, before.size())).isEqualTo(before);
        assertThat(stock.entries("bench")).isEqualTo(bench.entries("bench").subList(0, (int) stock.size("bench")));
    }

    @Test
    void a_clock_that_is_ahead_is_told_at_the_others_for_as_long_as_it_is() {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        stock.journal().close();
        stock.open(Instant.parse("2099-01-01T00:00:00Z"));
        stock.note(1);
        site.settle();
        assertThat(bench.exchange().notices())
                .anyMatch(notice -> notice.startsWith("The clock of stock is ahead of this one: its entry stock:"));
        bench.reopen();
        assertThat(bench.exchange().notices()).anyMatch(notice -> notice.startsWith("The clock of stock is ahead"));
        assertThat(stock.exchange().notices()).isEmpty();
    }

    @Test
    void a_station_folder_that_somebody_removed_comes_back_with_all_that_is_signed() throws IOException {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        bench.note(1);
        site.settle();
        Recorded.remove(site.share().resolve("bench"));
        bench.exchange();
        Path there = site.share().resolve("bench");
        assertThat(there.resolve("entries-000000.jsonl"))
                .hasSameBinaryContentAs(bench.folder().resolve("journal/bench/entries-000000.jsonl"));
        assertThat(there.resolve("checkpoints.jsonl"))
                .hasSameBinaryContentAs(bench.folder().resolve("journal/bench/checkpoints.jsonl"));
        bench.note(2);
        site.settleUntil(() -> stock.entries("bench", "note.written").size() == 2);
        assertThat(stock.exchange().notices()).isEmpty();
    }

    @Test
    @Tag("long")
    void what_comes_in_while_all_is_checked_is_no_finding() throws Exception {
        Machine bench = site.station("bench");
        Machine stock = site.station("stock");
        site.settle();
        // so many and no more: a check takes longer the more there is, and would never catch up with a recorder without
        // end
        Thread busy = new Thread(() -> {
            for (int number = 0; number < 300; number++) {
                bench.note(number);
                bench.exchange();
                stock.exchange();
            }
        });
        busy.start();
        do {
            assertThat(stock.journal().verify(Progress.NONE).findings()).isEmpty();
        } while (busy.isAlive());
        busy.join();
        assertThat(stock.entries("bench", "note.written")).hasSize(300);
    }
}
