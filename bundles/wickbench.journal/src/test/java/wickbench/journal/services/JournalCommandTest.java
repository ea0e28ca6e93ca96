package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;
import wickbench.journal.HomeBackups;
import wickbench.journal.JournalFolder;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

class JournalCommandTest {
    @TempDir
    Path folder;

    private HeardTerminal heard = HeardTerminal.ofNobody(false);

    @Test
    void an_empty_home_says_so() {
        assertThat(run(false, "status")).isZero();
        assertThat(heard.printed())
                .contains("Entries: 0", "No checkpoint yet.", "No station yet; the first entry founds it.");
        assertThat(run(false, "checkpoint")).isZero();
        assertThat(heard.printed()).containsExactly("No checkpoint yet.");
        assertThat(run(true, "checkpoint")).isZero();
        assertThat(heard.printed()).containsExactly("null");
        assertThat(run(true, "status")).isZero();
        assertThat(printed().get("founding")).contains(Json.Null.NULL);
    }

    @Test
    void a_good_journal_is_shown_sealed_and_holds() {
        record(new HomeFolder(folder));
        assertThat(run(false, "status")).isZero();
        assertThat(heard.printed())
                .contains("Entries: 2", "Home: " + folder)
                .anyMatch(line -> line.startsWith("Station: station-1"))
                .anyMatch(line -> line.startsWith("Newest checkpoint: 2 entries"));
        assertThat(run(false, "checkpoint")).isZero();
        assertThat(heard.printed()).startsWith("wickbench.invalid/station-1", "2");
        assertThat(run(false, "verify")).isZero();
        assertThat(heard.printed()).first().asString().startsWith("The journal holds: 2 entries");
        assertThat(run(true, "verify")).isZero();
        assertThat(printed().get("holds")).contains(new Json.Bool(true));
        assertThat(run(true, "status")).isZero();
        assertThat(printed().members().keySet()).contains("folder", "size", "root", "key_fingerprint", "checkpoint");
    }

    @Test
    void a_simulated_home_always_says_so() {
        HomeFolder home = new HomeFolder(folder);
        home.simulate(42, Instant.parse("2026-01-01T06:00:00Z"));
        record(home);
        assertThat(run(false, "status")).isZero();
        assertThat(heard.printed()).anyMatch(line -> line.contains("simulated clock (seed 42)"));
        assertThat(run(true, "status")).isZero();
        assertThat(heard.printed().get(0)).contains("\"seed\":\"42\"", "\"simulated\":true");
    }

    @Test
    void a_broken_journal_ends_with_one_and_names_where() throws IOException {
        record(new HomeFolder(folder));
        Path segment = folder.resolve("journal/station-1/entries-000000.jsonl");
        Files.writeString(segment, Files.readString(segment).replace("\"n\":1", "\"n\":2"));
        assertThat(run(false, "verify")).isEqualTo(1);
        assertThat(heard.printed().get(0)).startsWith("station-1:0-1: The checkpoint over 2 entries does not fit");
        assertThat(heard.printed()).anyMatch(line -> line.startsWith("The journal does not hold: 2 findings"));
        assertThat(run(true, "verify")).isEqualTo(1);
        assertThat(printed().get("holds")).contains(new Json.Bool(false));
        assertThat(heard.printed().get(0)).contains("\"code\":\"checkpoint.root\"", "\"where\":\"station-1:0-1\"");
    }

    @Test
    void what_was_set_aside_and_why_nothing_is_recorded_is_shown() throws IOException {
        record(new HomeFolder(folder));
        Files.writeString(folder.resolve("journal/station-1/entries-000000.jsonl"), "{", StandardOpenOption.APPEND);
        assertThat(run(false, "status")).isZero();
        assertThat(heard.printed())
                .anyMatch(line -> line.startsWith("Note: 1 bytes at the end of entries-000000.jsonl"));
        Path file = Files.writeString(folder.resolve("file"), "");
        folder = file;
        assertThat(run(false, "status")).isZero();
        assertThat(heard.printed()).anyMatch(line -> line.startsWith("Nothing can be recorded: The home " + file));
    }

    @Test
    void a_stopped_verification_says_that_it_stopped() {
        Words words = Words.of(JournalCommand.class, "journal");
        StationId station = new StationId("station-1");
        new JournalPrint(words, heard)
                .verification(new Verification(5, 1, Hash.ofContent(station.value()), List.of(), false));
        assertThat(heard.printed()).first().asString().startsWith("Stopped after 5 entries");
    }

    @Test
    void an_entry_is_proved_by_place_or_id_as_the_published_schema_says() throws IOException {
        record(new HomeFolder(folder));
        assertThat(run(true, "proof", "station-1:1")).isZero();
        assertThat(Schemas.published()
                        .errors("proof-1.schema.json", heard.printed().get(0)))
                .isEmpty();
        String byPlace = heard.printed().get(0);
        assertThat(run(true, "proof", new UUID(1, 1).toString())).isZero();
        assertThat(heard.printed()).containsExactly(byPlace);
        assertThat(run(true, "proof", "station-1:0", "--against", "1")).isZero();
        assertThat(Schemas.published()
                        .errors("proof-1.schema.json", heard.printed().get(0)))
                .isEmpty();
        assertThat(printed().get("consistency")).get().asString().isNotEqualTo("[]");
        assertThat(run(false, "proof", "station-1:0", "--against", "1")).isZero();
        assertThat(heard.printed())
                .anyMatch(line -> line.startsWith("Entry station-1:0, leaf "))
                .anyMatch(line -> line.startsWith("The checkpoint covers 2 entries"))
                .contains("wickbench.invalid/station-1");
        assertThat(run(false, "proof", "station-1:1")).isZero();
        assertThat(heard.printed()).noneMatch(line -> line.startsWith("The checkpoint covers"));
    }

    @Test
    void an_entry_that_is_not_there_or_not_named_is_told() {
        record(new HomeFolder(folder));
        assertThat(complaint("proof", "seven"))
                .contains("expected an entry as STATION:NUMBER or its id, found 'seven'");
        assertThat(complaint("proof", "station-1:x")).contains("found 'station-1:x'");
        assertThat(complaint("proof", new UUID(3, 3).toString())).contains("there is no entry with the id");
        assertThat(complaint("proof", "station-1:7")).isEqualTo("There is no station-1:7 here.");
    }

    @Test
    void a_checkpoint_is_compared_from_a_file_or_from_what_was_typed() throws IOException {
        record(new HomeFolder(folder));
        Path note = folder.resolve("journal/station-1/checkpoint");
        assertThat(run(false, "compare", note.toString())).isZero();
        assertThat(heard.printed())
                .containsExactly(
                        "The journal of station-1 holds all 2 entries of the checkpoint unchanged, and 0 since.");
        assertThat(run(true, "compare", Files.readString(note))).isZero();
        assertThat(heard.printed().get(0)).contains("\"result\":\"consistent\"", "\"signed\":true");
        assertThat(run(
                        true,
                        "compare",
                        "station-1",
                        "2",
                        Hash.ofContent("other").hex()))
                .isEqualTo(1);
        assertThat(heard.printed().get(0)).contains("\"result\":\"forked\"", "\"holds\":false", "\"signed\":false");
        assertThat(complaint("compare", "station-1", "2", "00")).contains("That is no checkpoint");
        assertThat(complaint("compare", folder.resolve("nothing").toString())).contains("expected a file");
    }

    @Test
    void a_journal_is_exported_as_tiles() {
        record(new HomeFolder(folder));
        Path tiles = folder.resolve("tiles");
        assertThat(run(false, "export-tiles", tiles.toString())).isZero();
        assertThat(heard.printed()).containsExactly("2 entries were exported to " + tiles + ".");
        assertThat(tiles.resolve("tile/entries/000.p/2")).exists();
        assertThat(run(true, "export-tiles", tiles + "-2", "--station", "station-1"))
                .isZero();
        assertThat(printed().get("folder")).isPresent();
        assertThat(complaint("export-tiles", tiles + "-3", "--station", "No")).contains("station name");
        assertThat(complaint("export-tiles", tiles + "-3", "--station", "other"))
                .isEqualTo("There is no other here.");
    }

    @Test
    void nothing_is_exported_of_a_home_that_was_never_founded() {
        assertThat(complaint("export-tiles", folder.resolve("tiles").toString()))
                .contains("No station yet");
    }

    private static JournalCommand command(HomeFolder home, JournalFolder journal) {
        return new JournalCommand(journal, journal.proofs(), home, new HomeBackups(home, () -> journal));
    }

    private static void record(HomeFolder home) {
        try (JournalFolder journal = JournalFolder.open(home, entries -> {})) {
            journal.found(new Founding(new StationId("station-1"), ZoneId.of("Europe/Madrid"), OptionalLong.empty()));
            journal.append(List.of(new Draft(
                    new UUID(1, 1),
                    new PersonId("rivera"),
                    "note.written",
                    1,
                    Json.object().with("n", 1))));
        }
    }

    private int run(boolean json, String... command) {
        heard = HeardTerminal.of(new PersonId("rivera"), json);
        try (JournalFolder journal = JournalFolder.open(new HomeFolder(folder), entries -> {})) {
            return new CommandLine(command(new HomeFolder(folder), journal).commands(heard)).execute(command);
        }
    }

    private Json.Obj printed() {
        return JsonReader.readObject("printed", heard.printed().get(0)).orRefuse();
    }

    /** Runs a command that is refused, and returns what it says. */
    private String complaint(String... command) {
        heard = HeardTerminal.of(new PersonId("rivera"), false);
        String[] said = new String[1];
        try (JournalFolder journal = JournalFolder.open(new HomeFolder(folder), entries -> {})) {
            new CommandLine(command(new HomeFolder(folder), journal).commands(heard))
                    .setExecutionExceptionHandler((failure, line, parsed) -> {
                        said[0] = failure.getMessage();
                        return 2;
                    })
                    .execute(command);
        }
        return said[0];
    }
}
