package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.bench.verify.PaperDesk;
import wickbench.testing.HeardTerminal;

/** {@code method}, called as the command line calls it. */
class MethodCommandTest {
    @TempDir
    private Path folder;

    private BenchHome home;
    private MethodCommand command;
    private Path file;
    private final HeardTerminal person = HeardTerminal.of(BenchHome.WRITER, false);
    private String complaint = "";

    @BeforeEach
    void open() throws IOException {
        home = new BenchHome(folder.resolve("home"));
        command = new MethodCommand(
                home.shelf, home.verifications, new PaperDesk(home.shelf, home.verifications, List.of()));
        file = folder.resolve("nut.json");
        try (var in = Sheets.class.getResourceAsStream("nut-swab.json")) {
            Files.write(file, in.readAllBytes());
        }
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void check_says_that_nothing_is_wrong_and_records_nothing() {
        assertThat(run("check", file.toString())).isZero();
        assertThat(person.lines()).containsExactly("nut-swab v1 (Nut on a dry surface): nothing wrong");
        assertThat(home.entries()).isZero();
    }

    @Test
    void issue_list_show_and_withdraw_follow_one_another() {
        assertThat(run("issue", file.toString())).isZero();
        assertThat(run("list")).isZero();
        assertThat(person.lines().get(1))
                .startsWith("nut-swab v1 | Nut on a dry surface")
                .endsWith("in force | not signed");

        assertThat(run("show", "nut-swab")).isZero();
        assertThat(person.lines()).anyMatch(line -> line.contains("Read from 300 s after the start, for 60 s."));

        assertThat(run("withdraw", "nut-swab", "--reason", "no longer made")).isZero();
        person.lines().clear();
        run("list");
        assertThat(person.lines().get(1)).endsWith("withdrawn | not signed");
        run("show", "nut-swab");
        assertThat(person.lines())
                .anyMatch(line -> line.startsWith("Withdrawn at ") && line.endsWith(", not signed: no longer made"));
    }

    @Test
    void each_thing_that_is_wrong_with_a_method_is_named() throws IOException {
        Files.writeString(
                file,
                Files.readString(file)
                        .replace("\"unit\": \"µg/100 cm²\", \"holds\"", "\"holds\"")
                        .replace("\"window_s\": 60", "\"window_s\": 0")
                        .replace("\"hook\": \"H\", ", ""));

        assertThat(run("issue", file.toString())).isEqualTo(2);

        assertThat(complaint.lines())
                .anyMatch(line -> line.startsWith("nut.json: limit.unit: is missing"))
                .anyMatch(line -> line.equals("nut.json: timing.window_s: expected seconds above 0, found 0"))
                .anyMatch(line -> line.startsWith("nut.json: marks.hook: is missing"));
        assertThat(home.entries()).isZero();
    }

    @Test
    void an_unknown_id_is_named() {
        assertThat(run("show", "walnut")).isEqualTo(2);
        assertThat(complaint).contains("there is no method 'walnut'");
    }

    private int run(String... arguments) {
        return new CommandLine(command.commands(person))
                .setExecutionExceptionHandler((e, line, result) -> {
                    complaint = e.getMessage();
                    return 2;
                })
                .execute(arguments);
    }
}
