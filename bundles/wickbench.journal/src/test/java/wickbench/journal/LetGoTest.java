package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.progress.Progress;

/** What a journal holds while it works, it lets go: files once they are read or full, threads, and its turn to write. */
class LetGoTest {
    @TempDir
    Path folder;

    private static List<String> named(String... files) {
        return Handles.told() ? List.of(files) : List.of();
    }

    @Test
    void only_what_grows_stays_open_and_nothing_after_the_end() throws IOException {
        Recorded.closed(folder, StationFolder.SEGMENT - 2);
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(Handles.below(folder)).isEqualTo(named("checkpoints.jsonl", "lock"));
            journal.append(Recorded.notes(0, 1));
            assertThat(Handles.below(folder)).isEqualTo(named("checkpoints.jsonl", "entries-000000.jsonl", "lock"));
            journal.append(Recorded.notes(1, 2));
            assertThat(Handles.below(folder)).isEqualTo(named("checkpoints.jsonl", "entries-000001.jsonl", "lock"));
            assertThat(Recorded.entries(journal)).hasSize(StationFolder.SEGMENT + 2);
            assertThat(journal.line(new EntryRef(Recorded.STATION, 7))).isPresent();
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();
            assertThat(Handles.below(folder)).isEqualTo(named("checkpoints.jsonl", "entries-000001.jsonl", "lock"));
            journal.proofs().prove(new EntryRef(Recorded.STATION, 7), OptionalLong.empty());
            assertThat(Handles.below(folder))
                    .hasSizeGreaterThanOrEqualTo(named("level-00").size());
        }
        assertThat(Handles.below(folder)).isEmpty();
    }

    @Test
    void stations_that_exchange_leave_nothing_open() throws IOException {
        try (Site site = new Site(folder)) {
            Site.Machine bench = site.station("bench");
            Site.Machine stock = site.station("stock");
            bench.note(1);
            site.settle();
            assertThat(stock.entries("bench", "note.written")).hasSize(1);
            assertThat(stock.journal().verify(Progress.NONE).holds()).isTrue();
            stock.journal().close();
            // what the share holds is never kept open
            assertThat(Handles.below(folder.resolve("share"))).isEmpty();
            assertThat(Handles.below(stock.folder())).isEmpty();
            stock.reopenClosed();
        }
        assertThat(Handles.below(folder)).isEmpty();
    }

    @Test
    void a_home_that_another_holds_or_that_cannot_be_opened_is_let_go() throws IOException {
        Recorded.closed(folder, 1);
        try (JournalFolder holder = Recorded.open(folder)) {
            assertThatThrownBy(() -> Recorded.open(folder)).isInstanceOf(Refusal.class);
            assertThat(holder.append(Recorded.notes(1, 1))).hasSize(1);
        }
        assertThat(Handles.below(folder)).isEmpty();
    }

    private static List<Thread> threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith("wickbench-journal-"))
                .toList();
    }

    @Test
    void its_threads_hinder_no_program_from_ending_and_end_with_it() throws InterruptedException {
        List<Thread> before = threads();
        List<Thread> own;
        try (Site site = new Site(folder)) {
            Site.Machine bench = site.station("bench");
            bench.note(1);
            own = threads().stream().filter(thread -> !before.contains(thread)).toList();
            assertThat(own).extracting(Thread::getName).contains("wickbench-journal-seal", "wickbench-journal-share");
            assertThat(own).allMatch(Thread::isDaemon);
        }
        for (Thread thread : own) {
            thread.join(10_000);
            assertThat(thread.isAlive()).as(thread.getName()).isFalse();
        }
    }

    @Test
    void whatever_one_thread_did_the_next_one_has_its_turn() throws Exception {
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            turn(() -> assertThat(journal.append(List.of())).isEmpty());
            turn(() -> refused(journal::cut));
            turn(() -> journal.found(Site.founding("bench")));
            turn(() -> refused(() -> journal.found(Site.founding("bench"))));
            turn(() -> journal.append(Recorded.notes(0, 2)));
            turn(journal::checkpoint);
            turn(journal::status);
            turn(journal::cut);
            turn(() -> journal.verify(Progress.NONE));
            turn(() -> journal.writing().sealQuietly());
            turn(() -> journal.writing().seal());
            turn(() -> journal.append(Recorded.notes(2, 1)));
        }
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable act) {
        assertThatThrownBy(act).isInstanceOf(Refusal.class);
    }

    /** What one thread does. */
    @FunctionalInterface
    private interface Act {
        void run() throws Exception;
    }

    /** Does something on a thread of its own, which must not wait for one that came before. */
    private static void turn(Act act) throws Exception {
        ExecutorService own = Executors.newSingleThreadExecutor();
        try {
            own.submit(() -> {
                        act.run();
                        return act;
                    })
                    .get(20, TimeUnit.SECONDS);
        } finally {
            own.shutdownNow();
        }
    }
}
