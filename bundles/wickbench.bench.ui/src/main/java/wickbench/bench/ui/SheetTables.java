package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.check.Complaint;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;
import wickbench.reading.FindingWords;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.RowSource;
import wickbench.widgets.TableSpec;

/** The two tables of a sheet: its strips as judged, or what is wrong with it. */
final class SheetTables {
    private SheetTables() {}

    static TableSpec<RecordedReading> strips(SheetRead sheet, SiteClock clock) {
        List<Column<RecordedReading>> columns = List.of(
                SheetTables.<RecordedReading>text("line", 48, row -> line(row.reading()))
                        .rightAligned(),
                text("sample", 76, row -> row.reading().sample().code()),
                text("place", 176, row -> row.reading().sample().place()),
                Column.<RecordedReading>marked(
                        "outcome",
                        title("outcome"),
                        226,
                        row -> Mark.of(
                                row.verdict().outcome(), row.reading().sample().dilution())),
                text("findings", 380, row -> findings(row.verdict())),
                text("method", 180, row -> row.reading().method().value()),
                text("operator", 80, row -> row.reading().operator().value()),
                text("lot", 110, row -> row.reading().lot().value()),
                text(
                        "started",
                        160,
                        row -> row.reading().times().started().map(clock::whole).orElse("")));
        return spec("sheet.strips", columns, sheet.readings());
    }

    static TableSpec<Complaint> complaints(SheetRead sheet) {
        List<Column<Complaint>> columns = List.of(
                SheetTables.<Complaint>text(
                                "line",
                                64,
                                row -> row.line().isPresent() ? "" + row.line().getAsInt() : "")
                        .rightAligned(),
                text("field", 140, Complaint::field),
                text("wrong", 620, Complaint::text));
        return spec("sheet.complaints", columns, sheet.complaints());
    }

    private static <T> TableSpec<T> spec(String id, List<Column<T>> columns, List<T> rows) {
        return new TableSpec<>(
                "bench." + id,
                BenchUiWords.get(id + ".name"),
                columns,
                RowSource.of(rows, columns),
                Optional.empty(),
                BenchUiWords.get(id + ".empty"));
    }

    private static <T> Column<T> text(String id, int width, Function<T, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return BenchUiWords.get("column." + id);
    }

    private static String line(Reading reading) {
        return reading.origin() instanceof Reading.Origin.Sheet sheet ? Integer.toString(sheet.line()) : "";
    }

    /** Returns what took the right to an outcome away first, then how many cautions there are. */
    private static String findings(Verdict verdict) {
        String heavy = verdict.findings().stream()
                .filter(finding -> finding.severity() != Severity.CAUTION)
                .map(FindingWords::text)
                .collect(Collectors.joining(" "));
        long cautions = verdict.findings().stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .count();
        String light =
                cautions == 0 ? "" : BenchUiWords.get(cautions == 1 ? "sheet.caution" : "sheet.cautions", cautions);
        return (heavy + " " + light).strip();
    }
}
