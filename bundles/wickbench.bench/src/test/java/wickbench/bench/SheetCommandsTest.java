package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.Sheets.GOOD_ROW;
import static wickbench.bench.Sheets.HEADER;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.check.BadInput;
import wickbench.api.command.CommandSet;
import wickbench.api.json.Json;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;
import wickbench.testing.Schemas;

/** {@code judge} and {@code record}, called as the command line calls them. */
class SheetCommandsTest {
    @TempDir
    private Path folder;

    private BenchHome home;
    private Path sheet;
    private final HeardTerminal machine = HeardTerminal.of(BenchHome.WRITER, true);
    private final HeardTerminal person = HeardTerminal.of(BenchHome.WRITER, false);

    @BeforeEach
    void open() throws IOException {
        home = new BenchHome(folder.resolve("home"));
        sheet = folder.resolve("sheet.csv");
        // read 361 s after the start: one second past the window (common practice, no source)
        String late = GOOD_ROW.replace("S1", "S2").replace("07:37:30", "07:38:01");
        Files.writeString(sheet, HEADER + GOOD_ROW + late);
    }

    @AfterEach
    void close() {
        home.close();
    }

    @Test
    void judge_needs_no_issued_method_when_files_are_named_and_records_nothing() throws IOException {
        assertThat(run(home.judge, machine, "--sheet", sheet.toString(), "--method", methodFile()))
                .isZero();

        Json.Arr printed = (Json.Arr) machine.values().get(0);
        assertThat(texts(printed, "sample")).containsExactly("S1", "S2");
        assertThat(texts(printed, "outcome")).containsExactly("negative", "invalid");
        assertThat(home.entries()).isZero();
        assertThat(folder.resolve("home/journal")).doesNotExist();
    }

    @Test
    void machine_output_is_as_its_schema_says() throws IOException {
        home.withMethods();
        // one with a level open above and a sign, one below the limit, one void
        Files.writeString(sheet, Files.readString(sheet) + GOOD_ROW.replace("control hook", "control hook ~test"));
        run(home.judge, machine, "--sheet", sheet.toString());
        run(home.record, machine, "--sheet", sheet.toString());

        assertThat(machine.values())
                .hasSize(2)
                .allSatisfy(printed -> assertThat(Schemas.published().errors("judged.schema.json", printed.canonical()))
                        .isEmpty());
    }

    @Test
    void the_schema_sees_an_invalid_with_a_level_and_an_entry_without_its_id() throws IOException {
        run(home.judge, machine, "--sheet", sheet.toString(), "--method", methodFile());
        String negative = ((Json.Arr) machine.values().get(0)).items().get(0).canonical();

        assertThat(schemaErrors(negative)).isEmpty();
        assertThat(schemaErrors(negative.replace("\"negative\"", "\"invalid\"")))
                .isNotEmpty();
        assertThat(schemaErrors(negative.replaceFirst("\\{", "{\"added\":true,")))
                .isNotEmpty();
    }

    private static List<String> schemaErrors(String strip) throws IOException {
        return Schemas.published().errors("judged.schema.json", "[" + strip + "]");
    }

    @Test
    void judge_names_the_method_that_nobody_knows() {
        assertThat(complaint(home.judge, machine))
                .isEqualTo(
                        "sheet.csv:2: method: there is no method 'nut-swab'; "
                                + "issue it, or name its file\nsheet.csv:3: method: there is no method 'nut-swab'; issue it, or name its file");
    }

    @Test
    void record_keeps_a_sheet_once() {
        home.withMethods();
        assertThat(run(home.record, machine, "--sheet", sheet.toString())).isZero();
        assertThat(machine.notes()).containsExactly("recorded 2, already there 0");

        assertThat(run(home.record, machine, "--sheet", sheet.toString())).isZero();
        assertThat(machine.notes()).contains("recorded 0, already there 2");
        assertThat(machine.values().get(0).canonical())
                .contains("\"added\":true")
                .contains("\"entry\":\"station-1:3\"");
        assertThat(home.entries()).isEqualTo(5); // founding, two methods, two readings
    }

    @Test
    @Meets("EU GMP Annex 11 6")
    void record_keeps_nothing_of_a_sheet_with_one_wrong_cell() throws IOException {
        home.withMethods();
        Files.writeString(sheet, Files.readString(sheet) + GOOD_ROW.replace("07:37:30", "07:30:00"));
        long before = home.entries();

        assertThat(complaint(home.record, person)).startsWith("sheet.csv:4: read: lies before the start");
        assertThat(home.entries()).isEqualTo(before);
    }

    @Test
    void people_read_a_table_its_reasons_and_the_caution() {
        home.withMethods();
        run(home.record, person, "--sheet", sheet.toString());

        assertThat(person.lines().get(1))
                .startsWith("S1 | Line 2 filler | nut-swab v1 | Negative | below 2 µg/100 cm²");
        assertThat(person.lines().get(2)).contains("Invalid").endsWith("time.read-late");
        assertThat(person.lines()).anyMatch(line -> line.contains("read too late"));
        assertThat(person.lines().get(person.lines().size() - 1))
                .contains("not detected by this method in this sample");
    }

    @Test
    void a_sheet_that_is_not_there_is_named() throws IOException {
        Files.delete(sheet);

        assertThat(complaint(home.record, person)).endsWith("sheet.csv: cannot be read: there is no such file");
    }

    private String complaint(CommandSet set, HeardTerminal terminal) {
        String[] said = new String[1];
        new CommandLine(set.commands(terminal))
                .setExecutionExceptionHandler((e, line, result) -> {
                    assertThat(e).isInstanceOf(BadInput.class);
                    said[0] = e.getMessage();
                    return 2;
                })
                .execute("--sheet", sheet.toString());
        return said[0];
    }

    private static int run(CommandSet set, HeardTerminal terminal, String... arguments) {
        return new CommandLine(set.commands(terminal)).execute(arguments);
    }

    private String methodFile() throws IOException {
        Path file = folder.resolve("nut-swab.json");
        try (var in = Sheets.class.getResourceAsStream("nut-swab.json")) {
            Files.write(file, in.readAllBytes());
        }
        return file.toString();
    }

    private static java.util.List<String> texts(Json.Arr array, String member) {
        return array.items().stream()
                .map(item -> ((Json.Text) ((Json.Obj) item).get(member).orElseThrow()).value())
                .toList();
    }
}
