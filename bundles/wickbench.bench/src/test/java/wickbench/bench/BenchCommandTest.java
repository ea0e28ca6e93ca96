package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.BenchHome.WRITER;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.home.HomeFolder;
import wickbench.bench.owed.BenchCommand;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Schemas;

/** {@code bench}, called as the command line calls it. */
class BenchCommandTest {
    @TempDir
    private Path folder;

    private BenchHome home;
    private String positive;
    private final HeardTerminal person = HeardTerminal.of(WRITER, false);
    private final HeardTerminal machine = HeardTerminal.of(WRITER, true);
    private String complaint = "";

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
        String row = GOOD_ROW.replace("control hook", "control hook test");
        positive = home.door
                .record(Sheets.read(HEADER + row).orRefuse(), WRITER)
                .get(0)
                .id()
                .toString();
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void what_is_owed_is_listed_until_it_is_done() {
        assertThat(run(person, "owed")).isZero();
        assertThat(person.lines())
                .anyMatch(line -> line.contains("hold until decided"))
                .anyMatch(line -> line.contains("name the neighbours"))
                .contains("3 open");

        assertThat(run(person, "clean", "--place=Line 2 filler", "--procedure=foam", "--ended=2026-03-02T07:00:00Z"))
                .isZero();
        assertThat(run(person, "neighbours", positive, "hopper")).isZero();
        assertThat(run(person, "settle", positive, "hold", "--reason=batch destroyed"))
                .isZero();
        assertThat(run(person, "settle", positive, "re-test", "--reason=line taken out of use"))
                .isZero();
        person.lines().clear();
        assertThat(run(person, "owed")).isZero();
        assertThat(person.lines()).containsExactly("Nothing is owed.");
    }

    @Test
    void machines_get_all_that_an_entry_owed_as_the_schema_says() throws IOException {
        assertThat(run(machine, "owed", "--because-of", positive)).isZero();

        String json = machine.values().get(0).canonical();
        assertThat(Schemas.published().errors("owed.schema.json", json)).isEmpty();
        assertThat(json).contains("\"step\":\"re-test\"", "\"missing\":[\"Line 2 filler\"]");
    }

    @Test
    void a_place_seen_soiled_is_on_the_list() {
        assertThat(run(person, "look", "--place=belt", "--result=soiled", "--at=2026-03-02T07:00:00Z"))
                .isZero();
        assertThat(run(person, "owed")).isZero();
        assertThat(person.lines()).anyMatch(line -> line.contains("clean again") && line.contains("belt"));
    }

    @Test
    void what_cannot_be_read_is_named() {
        assertThat(run(person, "owed", "--because-of", "that one")).isEqualTo(2);
        assertThat(complaint).contains("expected the id of an entry");
        assertThat(run(person, "look", "--place=belt", "--result=fine", "--at=2026-03-02T07:00:00Z"))
                .isEqualTo(2);
        assertThat(complaint).contains("expected one of clean, soiled");
        assertThat(run(person, "clean", "--place=belt", "--procedure=foam", "--ended=noon"))
                .isEqualTo(2);
        assertThat(complaint).contains("expected a UTC time");
        assertThat(run(person, "settle", positive, "love", "--reason=x")).isEqualTo(2);
        assertThat(complaint).contains("expected one of repeat");
    }

    @Test
    void whether_a_strip_may_be_started_is_told_by_every_gate() {
        assertThat(run(person, "may", "nut-swab", "--lot=L77", "--operator=ana"))
                .isZero();
        assertThat(person.printed())
                .anyMatch(line -> line.startsWith("method | cleared"))
                .anyMatch(line -> line.startsWith("stock | not checked") && line.contains("install stock"));

        assertThat(run(machine, "may", "nut-swab", "--lot=L77", "--at=2020-01-01T00:00:00Z"))
                .isEqualTo(2);
        assertThat(complaint).startsWith("The strip may not be started: ").contains("nut-swab v1");
        assertThat(machine.values().get(0).canonical())
                .contains("\"gate\":\"method\"", "\"rule\":\"method.not-in-force\"", "\"state\":\"refused\"");

        assertThat(run(person, "may", "no-such", "--lot=L77")).isEqualTo(2);
        assertThat(complaint).contains("no method 'no-such' was issued here");
        assertThat(run(person, "may", "nut-swab", "--lot= ")).isEqualTo(2);
        assertThat(complaint).contains("--lot", "expected a lot number");
    }

    private int run(HeardTerminal terminal, String... arguments) {
        return new CommandLine(
                        new BenchCommand(home.owed, home.advice, home.shelf, new HomeFolder(folder)).commands(terminal))
                .setExecutionExceptionHandler((e, line, result) -> {
                    complaint = e.getMessage();
                    return 2;
                })
                .execute(arguments);
    }
}
