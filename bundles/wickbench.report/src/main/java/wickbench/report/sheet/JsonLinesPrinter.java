package wickbench.report.sheet;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.json.Json;
import wickbench.api.report.FormulaGuard;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Table;

/** Prints the tables of a report as JSON lines: {@code {"row":{"Place":"Line 4"},"table":1}}. */
@Component(property = ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.JSON_LINES)
public final class JsonLinesPrinter implements ReportPrinter {

    @Activate
    public JsonLinesPrinter() {
        // needs nothing
    }

    @Override
    public String mediaType() {
        return JSON_LINES;
    }

    @Override
    public void print(Report report, OutputStream out) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        int number = 0;
        for (Table table : Tables.of(report)) {
            number++;
            List<String> names = names(table.columns());
            for (List<String> row : table.rows()) {
                Json.Obj cells = cells(table.columns(), names, Tables.row(table, row));
                writer.append(
                        Json.object().with("table", number).with("row", cells).canonical());
                writer.append('\n');
            }
        }
        writer.flush();
    }

    private static Json.Obj cells(List<Column> columns, List<String> names, List<String> row) {
        Json.Obj cells = Json.object();
        for (int i = 0; i < names.size(); i++) {
            cells = cells.with(names.get(i), cell(columns.get(i), row.get(i)));
        }
        return cells;
    }

    private static Json cell(Column column, String text) {
        return column.number() && FormulaGuard.number(text).isPresent()
                ? new Json.Num(FormulaGuard.number(text).get())
                : new Json.Text(Tables.whole(text));
    }

    /** Columns of the same title are told apart by their place. */
    private static List<String> names(List<Column> columns) {
        Set<String> taken = new HashSet<>();
        List<String> names = new ArrayList<>();
        for (Column column : columns) {
            String title = Tables.whole(column.title());
            String name = title;
            for (int n = 2; !taken.add(name); n++) {
                name = title + " (" + n + ")";
            }
            names.add(name);
        }
        return names;
    }
}
