package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The job of the first day, from outside: methods issued, a run sheet judged and recorded, the record proved. */
class MainJobTest {

    private static final Path DEMO = BuiltProduct.folder().resolve("demo");
    private static final String SHEET = DEMO.resolve("run-sheet.csv").toString();
    private static final int FOUND_WANTING = 1;
    private static final int BAD_INPUT = 2;

    @TempDir
    Path temporary;

    private Path home;

    @BeforeEach
    void name() {
        home = temporary.resolve("home");
    }

    @Test
    void a_sheet_is_judged_without_a_home() throws Exception {
        var arguments = new ArrayList<>(List.of("--json", "judge", "--sheet", SHEET));
        methods().forEach(file -> arguments.addAll(List.of("--method", file)));
        Answer judged = call(arguments);
        assertThat(judged.code()).isZero();
        assertThat(judged.out())
                .contains("\"outcome\":\"negative\"", "\"outcome\":\"positive\"")
                .contains("\"outcome\":\"positive-above-range\"", "\"outcome\":\"invalid\"");
        assertThat(temporary.resolve("data")).doesNotExist();
    }

    @Test
    void a_sheet_is_recorded_once_however_often_it_is_given() throws Exception {
        issueMethods();
        Answer first = atHome("record", "--sheet", SHEET);
        assertThat(first.code()).as(first.err()).isZero();
        String recorded = journal();
        Answer again = atHome("record", "--sheet", SHEET);
        assertThat(again.code()).as(again.err()).isZero();
        assertThat(journal()).isEqualTo(recorded).contains("\"kind\":\"reading.recorded\"");
    }

    @Test
    void what_was_recorded_is_proved_and_what_was_changed_is_found() throws Exception {
        issueMethods();
        assertThat(atHome("record", "--sheet", SHEET).code()).isZero();
        assertThat(atHome("journal", "checkpoint").code()).isZero();
        assertThat(atHome("journal", "verify").code()).isZero();
        String changed = journal().replace("\"L2-04\"", "\"L2-40\"");
        Files.writeString(journalFile(), changed, StandardCharsets.UTF_8);
        assertThat(atHome("journal", "verify").code()).isEqualTo(FOUND_WANTING);
    }

    @Test
    void a_sheet_with_one_bad_line_records_nothing() throws Exception {
        issueMethods();
        String before = journal();
        Path bad = temporary.resolve("bad.csv");
        Files.writeString(
                bad, Files.readString(Path.of(SHEET)).replaceFirst("2026-11-20T06:25:12", "2026-13-20T06:25:12"));
        Answer refused = atHome("record", "--sheet", bad.toString());
        assertThat(refused.code()).isEqualTo(BAD_INPUT);
        assertThat(refused.err()).contains("bad.csv").contains("2").contains("read");
        assertThat(journal()).isEqualTo(before);
    }

    private void issueMethods() throws Exception {
        var arguments = new ArrayList<>(List.of("method", "issue"));
        arguments.addAll(methods());
        Answer issued = atHome(arguments.toArray(String[]::new));
        assertThat(issued.code()).as(issued.err()).isZero();
    }

    private Answer atHome(String... arguments) throws Exception {
        var line = new ArrayList<>(List.of("--home", home.toString(), "--as", "op-01"));
        line.addAll(List.of(arguments));
        return call(line);
    }

    private Answer call(List<String> arguments) throws Exception {
        return new Program(temporary).call(arguments.toArray(String[]::new));
    }

    private String journal() throws IOException {
        return Files.readString(journalFile(), StandardCharsets.UTF_8);
    }

    private Path journalFile() throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("journal"))) {
            return files.filter(file -> file.toString().endsWith(".jsonl"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static List<String> methods() throws IOException {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"))) {
            return files.map(Path::toString)
                    .filter(file -> file.endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }
}
