package wickbench.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.report.Csv;
import wickbench.api.report.FormulaGuard;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Table;
import wickbench.report.Office;
import wickbench.testing.Meets;

/** Formula injection: CWE-1236; OWASP, "CSV Injection". What is written is read back by other programs. */
class SheetPrintersTest {
    private static final String NUMBER = "-12.5";

    @TempDir
    Path temporary;

    @Test
    @Meets("21 CFR 11.10(b)")
    void csv_comes_back_exactly() throws IOException {
        String csv = new String(printed(new CsvPrinter(), hostile()), StandardCharsets.UTF_8);
        assertThat(csv.charAt(0)).isEqualTo(Csv.MARK);
        List<CSVRecord> records =
                CSVFormat.RFC4180.parse(new StringReader(csv.substring(1))).getRecords();
        assertThat(records).hasSize(Hostile.CELLS.size() + 1);
        for (int i = 0; i < Hostile.CELLS.size(); i++) {
            assertThat(FormulaGuard.original(records.get(i + 1).get(0))).isEqualTo(Hostile.CELLS.get(i));
            assertThat(records.get(i + 1).get(1)).isEqualTo(NUMBER);
        }
    }

    @Test
    void libreoffice_finds_no_formula_in_csv() throws Exception {
        String flat = Office.flat(file(new CsvPrinter(), "hostile.csv"));
        assertThat(flat).contains("<table:table-cell").contains("=1+1").doesNotContain("table:formula");
        assertThat(flat).contains("office:value=\"-12.5\"");
    }

    /** That the test above can fail: the same cell without its guard is a formula. */
    @Test
    void libreoffice_finds_the_formula_in_an_unguarded_file() throws Exception {
        Path file = temporary.resolve("bare.csv");
        Files.writeString(file, "Name\r\n=1+1\r\n");
        assertThat(Office.flat(file)).contains("table:formula");
    }

    @Test
    void libreoffice_finds_no_formula_in_xlsx_and_gives_every_text_back() throws Exception {
        Path file = file(new XlsxPrinter(), "hostile.xlsx");
        assertThat(Office.flat(file)).contains("<table:table-cell").doesNotContain("table:formula");
        List<CSVRecord> records =
                CSVFormat.RFC4180.parse(new StringReader(Office.csv(file))).getRecords();
        for (int i = 0; i < Hostile.CELLS.size(); i++) {
            assertThat(records.get(i + 1).get(0)).isEqualTo(Hostile.CELLS.get(i));
            assertThat(records.get(i + 1).get(1)).isEqualTo(NUMBER);
        }
    }

    @Test
    void xlsx_leaves_while_rows_still_come() throws IOException {
        CountingStream out = new CountingStream();
        Iterable<List<String>> rows = () -> IntStream.range(0, 100_000)
                .mapToObj(i -> {
                    // rows come faster than they leave, but never are all of them kept
                    assertThat(i < 20_000 || out.count > 0)
                            .as("bytes written at row %d", i)
                            .isTrue();
                    return List.of("Line " + i, Integer.toString(i));
                })
                .iterator();
        new XlsxPrinter().print(report(new Table(columns(), rows)), out);
        assertThat(out.count).isGreaterThan(500_000);
    }

    @Test
    void json_lines_hold_every_character_and_true_numbers() throws IOException {
        String lines = new String(printed(new JsonLinesPrinter(), hostile()), StandardCharsets.UTF_8);
        assertThat(lines.lines()).hasSize(Hostile.CELLS.size());
        assertThat(lines.lines().findFirst()).contains("{\"row\":{\"Name\":\"=1+1\",\"Value\":-12.5},\"table\":1}");
    }

    @Test
    void columns_of_one_title_are_told_apart() throws IOException {
        Table table = Table.of(List.of("A", "A"), List.of(List.of("1", "2")));
        assertThat(new String(printed(new JsonLinesPrinter(), report(table)), StandardCharsets.UTF_8))
                .isEqualTo("{\"row\":{\"A\":\"1\",\"A (2)\":\"2\"},\"table\":1}\n");
    }

    @Test
    void a_csv_file_holds_one_table_and_says_so() {
        Table table = Table.of(List.of("A"), List.of());
        assertThatThrownBy(() -> printed(new CsvPrinter(), report(table, table)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("2");
    }

    @Test
    void half_a_character_becomes_a_mark() throws IOException {
        Table table = Table.of(List.of("A"), List.of(List.of("x\uD800y")));
        assertThat(new String(printed(new CsvPrinter(), report(table)), StandardCharsets.UTF_8))
                .contains("x\uFFFDy");
    }

    @Test
    void a_text_too_long_for_a_cell_says_so() {
        String cell = XlsxText.of("x".repeat(40_000));
        assertThat(cell).hasSize(XlsxText.LONGEST).endsWith("… [40000]");
    }

    private static Report hostile() {
        return report(new Table(
                columns(),
                Hostile.CELLS.stream().map(cell -> List.of(cell, NUMBER)).toList()));
    }

    private static List<Column> columns() {
        return List.of(Column.text("Name"), Column.number("Value"));
    }

    private static Report report(Table... tables) {
        return new Report("Report", List.<Section>of(tables), List.of());
    }

    private Path file(ReportPrinter printer, String name) throws IOException {
        return Files.write(temporary.resolve(name), printed(printer, hostile()));
    }

    private static byte[] printed(ReportPrinter printer, Report report) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        printer.print(report, out);
        return out.toByteArray();
    }

    private static final class CountingStream extends OutputStream {
        private long count;

        @Override
        public void write(int b) {
            count++;
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            count += length;
        }
    }
}
