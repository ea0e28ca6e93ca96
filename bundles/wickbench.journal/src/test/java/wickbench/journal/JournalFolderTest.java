package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.progress.Progress;

class JournalFolderTest {
    private static final StationId STATION = Recorded.STATION;

    @TempDir
    Path folder;

    @Test
    void the_first_append_founds_the_home_and_tells_of_both_entries() {
        List<Entry> heard = new ArrayList<>();
        try (JournalFolder journal = JournalFolder.open(new HomeFolder(folder), heard::addAll)) {
            assertThat(journal.founding()).isEmpty();
            assertThat(journal.stations()).isEmpty();
            assertThat(journal.size(STATION)).isZero();
            assertThat(journal.checkpoint()).isEmpty();
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();

            List<Entry> appended = journal.append(Recorded.notes(0, 1));
            assertThat(journal.founding()).contains(Founding.defaults(ZoneId.systemDefault()));
            assertThat(journal.stations()).containsExactly(STATION);
            assertThat(heard).hasSize(2).endsWith(appended.get(0));
            assertThat(heard.get(0).kind()).isEqualTo("station.founded");
            assertThat(heard.get(0).body().get("clock")).contains(new Json.Text("system"));
            assertThat(heard.get(0).by()).hasToString("founder");
            assertThat(heard.get(0).prev()).isEqualTo(Kept.NOTHING.leaf());
            assertThat(heard.get(1).prev()).isEqualTo(heard.get(0).leaf());
        }
    }

    @Test
    void nothing_to_append_founds_nothing() {
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.append(List.of())).isEmpty();
            assertThat(journal.founding()).isEmpty();
        }
    }

    @Test
    void a_home_is_founded_once() {
        Founding wanted = new Founding(new StationId("bench"), ZoneId.of("Europe/Madrid"), OptionalLong.empty());
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.found(wanted)).isEqualTo(wanted);
            assertThatThrownBy(() -> journal.found(wanted))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("already");
            Entry entry = journal.append(Recorded.notes(0, 1)).get(0);
            assertThat(entry.offset())
                    .isEqualTo(ZoneId.of("Europe/Madrid").getRules().getOffset(entry.at()));
        }
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.founding()).contains(wanted);
        }
    }

    @Test
    void an_entry_is_found_by_its_place_in_any_segment() {
        try (JournalFolder journal = Recorded.open(folder)) {
            List<Entry> appended = journal.append(Recorded.notes(0, 2 * StationFolder.SEGMENT + 5));
            for (int place : new int[] {1, 2, 9_999, 10_000, 10_001, 19_999, 20_000, 20_005}) {
                Entry entry = appended.get(place - 1);
                assertThat(journal.entry(entry.ref())).contains(entry);
                assertThat(journal.line(entry.ref()))
                        .contains(new String(EntryLine.write(entry), StandardCharsets.UTF_8));
            }
            assertThat(journal.entry(new EntryRef(STATION, 20_006))).isEmpty();
            assertThat(journal.line(new EntryRef(STATION, 20_006))).isEmpty();
            assertThat(journal.entry(new EntryRef(new StationId("stock"), 0))).isEmpty();
            assertThat(Files.exists(Recorded.files(folder).segment(2))).isTrue();
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();
        }
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.append(Recorded.notes(0, 1)).get(0).ref().seq()).isEqualTo(20_006);
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();
        }
    }

    @Test
    void a_full_segment_is_followed_by_the_next_after_reopening() {
        Recorded.closed(folder, StationFolder.SEGMENT - 1);
        try (JournalFolder journal = Recorded.open(folder)) {
            journal.append(Recorded.notes(0, 2));
            assertThat(Files.exists(Recorded.files(folder).segment(1))).isTrue();
        }
        assertThat(Recorded.verified(folder).findings()).isEmpty();
        assertThat(Recorded.entries(folder)).hasSize(StationFolder.SEGMENT + 2);
    }

    @Test
    void a_reader_stops_when_it_has_enough_and_starts_where_it_wants() {
        Recorded.closed(folder, 20);
        try (JournalFolder journal = Recorded.open(folder)) {
            List<Long> places = new ArrayList<>();
            journal.read(STATION, 5, entry -> places.add(entry.ref().seq()) && places.size() < 3);
            assertThat(places).containsExactly(5L, 6L, 7L);
            journal.read(STATION, 21, entry -> places.add(-1L));
            assertThat(places).hasSize(3);
        }
    }

    @Test
    void a_checkpoint_comes_at_least_every_thousand_entries_and_at_close() {
        try (JournalFolder journal = Recorded.open(folder)) {
            journal.append(Recorded.notes(0, 998));
            assertThat(journal.status().checkpoint()).isEmpty();
            journal.append(Recorded.notes(0, 1));
            assertThat(journal.status().checkpoint()).map(Checkpoint::size).contains(1_000L);
            journal.append(Recorded.notes(0, 1));
        }
        try (JournalFolder journal = Recorded.open(folder)) {
            Checkpoint newest = journal.status().checkpoint().orElseThrow();
            assertThat(newest.size()).isEqualTo(1_001);
            assertThat(newest.root()).isEqualTo(journal.status().root());
            assertThat(journal.checkpoint()).contains(newest);
            assertThat(Recorded.files(folder).note()).hasContent(newest.note());
        }
    }

    @Test
    void a_checkpoint_comes_after_quiet() throws InterruptedException {
        try (JournalFolder journal = Recorded.open(folder)) {
            journal.append(Recorded.notes(0, 3));
            while (journal.status().checkpoint().isEmpty()) {
                Thread.sleep(20);
            }
            assertThat(journal.status().checkpoint()).map(Checkpoint::size).contains(4L);
        }
    }

    @Test
    void equal_seeds_give_equal_bytes() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        for (Path each : List.of(one, two)) {
            simulated(each, 42);
        }
        for (Path file : List.of(
                Recorded.files(one).segment(0), Recorded.files(one).checkpoints(), new Layout(one).key(STATION))) {
            assertThat(two.resolve(one.relativize(file))).hasSameBinaryContentAs(file);
        }
        simulated(folder.resolve("three"), 43);
        assertThat(Files.mismatch(
                        Recorded.files(one).segment(0),
                        Recorded.files(folder.resolve("three")).segment(0)))
                .isNotNegative();
        try (JournalFolder journal = Recorded.open(one)) {
            assertThat(journal.founding().orElseThrow().simulatedSeed()).hasValue(42);
        }
    }

    private static void simulated(Path folder, long seed) {
        HomeFolder home = new HomeFolder(folder);
        home.simulate(seed, Instant.parse("2026-01-01T06:00:00Z"));
        try (JournalFolder journal = Recorded.open(home)) {
            journal.found(new Founding(STATION, ZoneId.of("Europe/Madrid"), OptionalLong.of(seed)));
            for (int i = 0; i < 3; i++) {
                journal.append(List.of(new Draft(
                        Draft.randomId(home.chance()), OwnStation.JOURNAL, "note.written", 1, Json.object())));
            }
        }
    }

    @Test
    void a_home_without_simulated_clock_is_not_founded_as_simulated() {
        try (JournalFolder journal = Recorded.open(folder)) {
            Founding wanted = new Founding(STATION, ZoneId.of("UTC"), OptionalLong.of(1));
            assertThatThrownBy(() -> journal.found(wanted)).isInstanceOf(Refusal.class);
            assertThat(journal.founding()).isEmpty();
        }
    }

    @Test
    void a_real_home_never_accepts_a_simulated_clock() {
        HomeFolder home = new HomeFolder(folder);
        Path real = folder.resolveSibling(folder.getFileName() + "-real");
        Recorded.closed(real, 1);
        home.simulate(7, Instant.EPOCH);
        Recorded.copy(real.resolve("journal"), folder.resolve("journal"));
        Recorded.copy(real.resolve("keys"), folder.resolve("keys"));
        try (JournalFolder journal = Recorded.open(home)) {
            assertThatThrownBy(() -> journal.append(Recorded.notes(1, 1)))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("never accepts a simulated");
        }
    }

    @Test
    void a_listener_that_fails_takes_nothing_back() {
        try (JournalFolder journal = JournalFolder.open(new HomeFolder(folder), entries -> {
            throw new IllegalStateException("deaf");
        })) {
            assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
            assertThat(journal.status().notices()).singleElement().asString().contains("deaf");
        }
    }

    @Test
    void an_entry_that_nobody_could_read_back_is_refused() {
        try (JournalFolder journal = Recorded.open(folder)) {
            Draft note = Recorded.note(0);
            Draft huge = new Draft(
                    note.id(), note.by(), note.kind(), 1, Json.object().with("text", "x".repeat(Lines.LONGEST)));
            assertThatThrownBy(() -> journal.append(List.of(note, huge))).isInstanceOf(Refusal.class);
            assertThat(journal.size(STATION)).isEqualTo(1);
            assertThat(journal.append(List.of(note))).hasSize(1);
        }
        assertThat(Recorded.verified(folder).holds()).isTrue();
    }

    @Test
    void a_draft_that_could_not_be_read_back_is_bad_input() {
        Json.Obj deep = Json.object();
        for (int i = 0; i < 70; i++) {
            deep = Json.object().with("in", deep);
        }
        Draft note = Recorded.note(0);
        try (JournalFolder journal = Recorded.open(folder)) {
            for (Draft bad : List.of(
                    new Draft(note.id(), note.by(), note.kind(), 1, deep),
                    new Draft(note.id(), note.by(), note.kind(), 0, note.body()),
                    new Draft(note.id(), note.by(), " ", 1, note.body()))) {
                assertThatThrownBy(() -> journal.append(List.of(note, bad))).isInstanceOf(BadInput.class);
            }
            assertThat(journal.size(STATION)).isEqualTo(1);
        }
    }

    @Test
    void the_key_is_readable_by_its_owner_only() throws IOException {
        Recorded.closed(folder, 1);
        Path key = new Layout(folder).key(STATION);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
                .isEqualTo("rw-------");
    }

    @Test
    void threads_append_without_a_gap_and_readers_see_whole_entries_only()
            throws InterruptedException, ExecutionException {
        var threads = Executors.newFixedThreadPool(4);
        try (JournalFolder journal = Recorded.open(folder)) {
            journal.append(Recorded.notes(0, 1));
            List<Future<?>> work = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                work.add(threads.submit(
                        () -> Recorded.notes(0, 100).forEach(note -> journal.append(List.of(note, note)))));
            }
            work.add(threads.submit(() -> {
                for (int i = 0; i < 50; i++) {
                    assertThat(Recorded.entries(journal)).hasSizeGreaterThanOrEqualTo(2);
                    assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
                }
            }));
            for (Future<?> each : work) {
                each.get();
            }
            assertThat(Recorded.entries(journal)).hasSize(602);
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void an_interrupted_thread_appends_and_the_next_one_too() {
        try (JournalFolder journal = Recorded.open(folder)) {
            Thread.currentThread().interrupt();
            assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
            assertThat(journal.checkpoint()).isPresent();
            assertThat(Thread.interrupted()).isTrue();
            assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
            assertThat(journal.status().notices()).isEmpty();
        }
    }

    @Test
    void verifying_stops_when_its_watcher_says_so() {
        Recorded.closed(folder, 10_000);
        try (JournalFolder journal = Recorded.open(folder)) {
            var stopped = journal.verify((done, total) -> {
                assertThat(done).isLessThanOrEqualTo(total);
                return false;
            });
            assertThat(stopped.complete()).isFalse();
            assertThat(stopped.holds()).isFalse();
            assertThat(stopped.entries()).isBetween(1L, 9_999L);
        }
    }
}
