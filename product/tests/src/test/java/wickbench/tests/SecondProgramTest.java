package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands beside a desktop that is open on the same home, each in a process of its own. */
class SecondProgramTest {

    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final int FOUND_WANTING = 1;
    private static final int BAD_INPUT = 2;
    private static final int REFUSED = 3;

    @TempDir
    Path temporary;

    private Path home;
    private Program program;

    @BeforeEach
    void name() {
        home = temporary.resolve("home");
        program = new Program(temporary);
    }

    @Test
    void commands_beside_the_desktop_answer_as_they_do_alone() throws Exception {
        Files.copy(DEMO.resolve("run-sheet.csv"), temporary.resolve("sheet.csv"));
        try (var desktop = HoldingDesktop.open(program, home)) {
            assertDone(atHome(methodIssue()));
            // the path is relative to where the caller stands, not the desktop
            Answer recorded = atHome("record", "--sheet", "sheet.csv");
            assertDone(recorded);
            assertDone(atHome("journal", "verify"));
            assertThat(journal()).contains("\"kind\":\"reading.recorded\"").contains("\"by\":\"op-01\"");

            Answer listed = atHome("--json", "ledger", "list");
            assertDone(listed);
            assertThat(listed.out()).startsWith("[{").endsWith("}]\n");
            assertThat(desktop.process().isAlive()).isTrue();

            Answer none = atHome("record", "--sheet", "nowhere.csv");
            assertThat(none.code()).isEqualTo(BAD_INPUT);
            assertThat(none.err()).contains("nowhere.csv").doesNotContain("\tat ");
            assertThat(none.out()).isEmpty();

            assertThat(atHome("ledger", "frobnicate").code()).isEqualTo(BAD_INPUT);
            assertThat(atHome("people", "role", "nobody", "--role", "operator").code())
                    .isEqualTo(REFUSED);
        }
        Answer alone = atHome("--json", "ledger", "list");
        assertDone(alone);
        assertThat(alone.out()).startsWith("[{");
    }

    @Test
    void a_seal_broken_under_the_desktop_is_told_to_the_caller() throws Exception {
        assertDone(atHome(methodIssue()));
        assertDone(atHome("journal", "checkpoint"));
        try (var desktop = HoldingDesktop.open(program, home)) {
            assertThat(desktop.process().isAlive()).isTrue();
            Path file = journalFile();
            Files.writeString(file, Files.readString(file).replaceFirst("op-01", "op-02"));
            Answer verified = atHome("journal", "verify");
            assertThat(verified.code()).isEqualTo(FOUND_WANTING);
        }
    }

    @Test
    void two_callers_at_once_are_both_answered_and_nothing_is_lost() throws Exception {
        try (var desktop = HoldingDesktop.open(program, home)) {
            assertThat(desktop.process().isAlive()).isTrue();
            assertDone(atHome("people", "add", "op-01", "--name", "Rivera", "--role", "administrator"));
            List<CompletableFuture<Answer>> both = IntStream.of(2, 3)
                    .mapToObj(n -> CompletableFuture.supplyAsync(
                            () -> quietly("people", "add", "op-0" + n, "--name", "Person " + n, "--role", "operator")))
                    .toList();
            both.forEach(answer -> assertDone(answer.join()));
        }
        assertThat(atHome("--json", "people", "list").out()).contains("op-01", "op-02", "op-03");
        assertDone(atHome("journal", "verify"));
    }

    @Test
    void what_needs_no_home_asks_no_holder() throws Exception {
        try (var desktop = HoldingDesktop.open(program, home)) {
            // killed, but its home still looks held: whoever asked for it would have to take it over
            desktop.kill();
            Answer checked = atHome("method", "check", methods().get(0));
            assertDone(checked);
            assertThat(home.resolve("door/key.json")).exists();
        }
    }

    @Test
    void after_a_killed_desktop_a_command_opens_the_home_itself() throws Exception {
        try (var desktop = HoldingDesktop.open(program, home)) {
            desktop.kill();
            assertThat(home.resolve("door/socket")).exists();
            assertDone(atHome(methodIssue()));
        }
        assertThat(home.resolve("door")).doesNotExist();
        assertThat(journal()).contains("\"kind\":\"method.issued\"");
    }

    @Test
    void what_needs_a_program_of_its_own_hears_who_holds_the_home() throws Exception {
        try (var desktop = HoldingDesktop.open(program, home)) {
            Answer demo = atHome("demo");
            assertThat(demo.code()).isEqualTo(REFUSED);
            assertThat(demo.err().lines()).singleElement().asString().contains(home.toString());
            assertThat(desktop.process().isAlive()).isTrue();
        }
    }

    @Test
    void a_second_desktop_brings_the_first_forward_and_ends() throws Exception {
        try (var desktop = HoldingDesktop.open(program, home)) {
            Answer second = program.call("--home", home.toString());
            assertThat(second.code()).as(second.err()).isZero();
            assertThat(second.err()).isEmpty();
            assertThat(desktop.process().isAlive()).isTrue();
        }
    }

    @Test
    void of_desktops_started_at_once_exactly_one_opens_and_the_others_bring_it_forward() throws Exception {
        List<Process> started = new ArrayList<>();
        try {
            for (int n = 0; n < 3; n++) {
                started.add(program.process("--home", home.toString(), "--as", "op-01")
                        .redirectErrorStream(true)
                        .redirectOutput(temporary.resolve("desktop-" + n).toFile())
                        .start());
            }
            List<Process> ended = new ArrayList<>();
            while (ended.size() < 2) {
                CompletableFuture.anyOf(started.stream()
                                .filter(each -> !ended.contains(each))
                                .map(Process::onExit)
                                .toArray(CompletableFuture[]::new))
                        .orTimeout(60, java.util.concurrent.TimeUnit.SECONDS)
                        .join();
                started.stream()
                        .filter(each -> !each.isAlive() && !ended.contains(each))
                        .forEach(ended::add);
            }
            assertThat(ended).hasSize(2).allMatch(each -> each.exitValue() == 0);
            for (int n = 0; n < 3; n++) {
                assertThat(temporary.resolve("desktop-" + n)).isEmptyFile();
            }
            // the one that is left holds the home and answers for it
            assertThat(program.call("--home", home.toString()).code()).isZero();
            assertThat(started.stream().filter(Process::isAlive)).hasSize(1);
        } finally {
            started.forEach(Process::destroy);
            started.forEach(each -> each.onExit().join());
        }
    }

    private String[] methodIssue() throws IOException {
        var arguments = new ArrayList<>(List.of("method", "issue"));
        arguments.addAll(methods());
        return arguments.toArray(String[]::new);
    }

    private static List<String> methods() throws IOException {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"))) {
            return files.map(Path::toString)
                    .filter(file -> file.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    private Answer atHome(String... arguments) throws IOException, InterruptedException {
        var line = new ArrayList<>(List.of("--home", home.toString(), "--as", "op-01"));
        line.addAll(List.of(arguments));
        return program.call(line.toArray(String[]::new));
    }

    private Answer quietly(String... arguments) {
        try {
            return atHome(arguments);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void assertDone(Answer answer) {
        assertThat(answer.code()).as(answer.err()).isZero();
    }

    private String journal() throws IOException {
        return Files.readString(journalFile());
    }

    private Path journalFile() throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("journal"))) {
            return files.filter(file -> file.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
