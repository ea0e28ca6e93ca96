package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** What is exported is read by a reader that knows C2SP tlog-tiles and nothing of the house. */
class TileExportTest {
    @TempDir
    Path folder;

    private static Checkpoint export(JournalFolder journal, Path to) {
        return journal.proofs().exportTiles(Recorded.STATION, to, Progress.NONE);
    }

    /** Sizes around full tiles of the lowest level. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 254, 255, 256, 300, 511})
    void a_stranger_reads_every_size(int notes) throws Exception {
        aStrangerReads(notes);
    }

    @Test
    @Tag("long")
    void a_stranger_reads_full_tiles_of_the_next_level_too() throws Exception {
        aStrangerReads(66_000);
    }

    private void aStrangerReads(int notes) throws Exception {
        Path tiles = folder.resolve("tiles");
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            journal.append(Recorded.notes(0, Math.max(1, notes)));
            Checkpoint checkpoint = export(journal, tiles);
            assertThat(Files.readString(tiles.resolve("checkpoint"))).isEqualTo(checkpoint.note());
        }
        TileReader reader = new TileReader(tiles);
        assertThat(reader.size()).isEqualTo(Math.max(1, notes) + 1);
        assertThat(reader.entries()).isEqualTo(lines(folder.resolve("home")));
        assertThat(reader.holds()).isTrue();
    }

    private static List<String> lines(Path home) throws IOException {
        try (Stream<Path> segments = Files.list(Recorded.files(home).folder())) {
            return segments.filter(path -> path.getFileName().toString().startsWith("entries-"))
                    .sorted()
                    .flatMap(TileExportTest::linesOf)
                    .toList();
        }
    }

    private static Stream<String> linesOf(Path segment) {
        try {
            return Files.readAllLines(segment).stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void a_stranger_sees_an_altered_bundle_and_an_altered_tile() throws Exception {
        Path tiles = folder.resolve("tiles");
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            journal.append(Recorded.notes(0, 300));
            export(journal, tiles);
        }
        for (String file : List.of("tile/entries/000", "tile/0/000", "tile/0/001.p/45", "tile/1/000.p/1")) {
            byte[] right = Files.readAllBytes(tiles.resolve(file));
            byte[] wrong = right.clone();
            wrong[wrong.length / 2] ^= 1;
            Files.write(tiles.resolve(file), wrong);
            assertThat(new TileReader(tiles).holds()).as(file).isFalse();
            Files.write(tiles.resolve(file), right);
        }
        assertThat(new TileReader(tiles).holds()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0, 000", "999, 999", "1000, x001/000", "1234067, x001/x234/067"})
    void a_tile_is_named_in_groups_of_three_digits(long number, String path) {
        assertThat(TileExport.path(number)).isEqualTo(path);
    }

    @Test
    void an_export_into_a_folder_that_holds_something_is_refused() throws IOException {
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            journal.append(Recorded.notes(0, 1));
            assertThatThrownBy(() -> export(journal, folder))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("holds something already");
            Files.createDirectory(folder.resolve("empty"));
            assertThat(export(journal, folder.resolve("empty")).size()).isEqualTo(2);
        }
    }

    @Test
    void an_entry_too_long_for_a_tile_is_named_and_nothing_is_left() {
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            Json.Obj body = Json.object().with("text", "x".repeat(66_000));
            journal.append(List.of(new Draft(new UUID(1, 7), new PersonId("rivera"), "note.written", 1, body)));
            assertThatThrownBy(() -> export(journal, folder.resolve("tiles")))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("Entry 1 has");
        }
        assertThat(folder.toFile().list()).containsExactly("home");
    }

    @Test
    void an_export_that_is_stopped_leaves_nothing() {
        try (JournalFolder journal = Recorded.open(folder.resolve("home"))) {
            journal.append(Recorded.notes(0, 300));
            assertThatThrownBy(() -> journal.proofs()
                            .exportTiles(Recorded.STATION, folder.resolve("tiles"), (done, total) -> false))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("Stopped");
        }
        assertThat(folder.toFile().list()).containsExactly("home");
    }

    @Test
    void an_export_is_stopped_while_it_reckons_hashes_too() {
        Path home = folder.resolve("long");
        Recorded.closed(home, 5_000);
        try (JournalFolder journal = Recorded.open(home)) {
            long[] asked = {0};
            assertThatThrownBy(() -> journal.proofs()
                            .exportTiles(Recorded.STATION, folder.resolve("out"), (done, total) -> {
                                asked[0] = done;
                                return false;
                            }))
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo("export.stopped"));
            assertThat(asked[0]).isEqualTo(4_096);
            assertThat(folder.resolve("out")).doesNotExist();
            journal.proofs().exportTiles(Recorded.STATION, folder.resolve("out"), (done, total) -> true);
            assertThat(folder.resolve("out/checkpoint")).exists();
        }
    }
}
