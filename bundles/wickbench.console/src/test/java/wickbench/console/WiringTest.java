package wickbench.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wickbench.api.check.Refusal;
import wickbench.api.words.Words;

class WiringTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Streams streams = new Streams(
            InputStream.nullInputStream(),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    private final PlainTerminal terminal = new PlainTerminal(
            streams, GlobalOptions.of(), prompt -> Optional.empty(), Words.of(FrontDoor.class, "console"));

    @Command(name = "weigh")
    final class Weigh implements Runnable {
        @Option(names = "--on")
        private LocalDate on;

        @Override
        public void run() {
            if (on.getYear() < 2000) {
                throw new Refusal("date.old", "too long ago");
            }
            terminal.line("weighed µg on " + on);
        }
    }

    @Command(name = "scales")
    static final class Scales {}

    @Test
    void calls_a_command_and_prints_utf8() {
        assertThat(run("weigh", "--on", "2026-03-01")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("weighed µg on 2026-03-01" + System.lineSeparator());
    }

    @Test
    void says_in_one_line_what_is_wrong_with_an_option() {
        assertThat(run("weigh", "--on", "yesterday")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1).allMatch(line -> line.contains("--on"));
    }

    @Test
    void says_in_one_line_that_a_command_is_unknown() {
        assertThat(run("measure")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines()).hasSize(1).allMatch(line -> line.contains("measure"));
    }

    @Test
    void every_command_shows_its_help() {
        assertThat(run("weigh", "--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .startsWith("Usage: wickbench weigh")
                .contains("--on");
    }

    @Test
    void ends_with_3_when_a_rule_refuses() {
        assertThat(run("weigh", "--on", "1970-01-01")).isEqualTo(3);
    }

    @Test
    void says_which_commands_there_are_where_none_of_them_is_named() {
        assertThat(run("scales")).isEqualTo(2);
        assertThat(run("scales", "burn")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines())
                .containsExactly(
                        "wickbench scales: expected one of its commands: level, weigh",
                        "wickbench scales: expected one of its commands: level, weigh; found 'burn'");
    }

    private int run(String... arguments) {
        CommandLine line = CommandWords.given(new Root(() -> 0));
        line.addSubcommand("weigh", CommandWords.given(new Weigh()));
        CommandLine scales = CommandWords.given(new Scales());
        scales.addSubcommand("weigh", CommandWords.given(new Weigh()));
        scales.addSubcommand("level", CommandWords.given(new Weigh()));
        line.addSubcommand("scales", scales);
        return Wiring.of(line, streams, Path.of(""), e -> ExitCode.of(e, streams.err(), false))
                .execute(arguments);
    }
}
