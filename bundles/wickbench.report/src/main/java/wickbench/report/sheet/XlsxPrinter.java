package wickbench.report.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.report.FormulaGuard;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Table;
import wickbench.report.ReportWords;

/**
 * Prints the tables of a report as a workbook, a sheet each, row by row.
 *
 * <p>Every cell has a type: what is no number is text, whatever it starts with, and no cell is a formula.
 */
@Component(property = ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.XLSX)
public final class XlsxPrinter implements ReportPrinter {
    /** What a sheet can hold; a longer table goes on in the next sheet. */
    private static final int ROWS = 1_048_576;
    /** Rows kept before they are written out. */
    private static final int TOGETHER = 500;

    @Activate
    public XlsxPrinter() {
        // needs nothing
    }

    @Override
    public String mediaType() {
        return XLSX;
    }

    @Override
    public void print(Report report, OutputStream out) throws IOException {
        Workbook workbook = new Workbook(out, "Wickbench", null);
        int number = 0;
        for (Table table : Tables.of(report)) {
            number++;
            print(table, workbook, ReportWords.get("xlsx.sheet", number));
        }
        if (number == 0) {
            // a workbook without a sheet cannot be opened
            workbook.newWorksheet(ReportWords.get("xlsx.sheet", 1)).finish();
        }
        workbook.finish();
    }

    private static void print(Table table, Workbook workbook, String name) throws IOException {
        int part = 1;
        Worksheet sheet = begin(table, workbook, name);
        int at = 1;
        for (List<String> row : table.rows()) {
            if (at == ROWS) {
                sheet.finish();
                part++;
                sheet = begin(table, workbook, name + " (" + part + ")");
                at = 1;
            }
            write(sheet, at++, table.columns(), Tables.row(table, row));
            if (at % TOGETHER == 0) {
                sheet.flush();
            }
        }
        sheet.finish();
    }

    private static Worksheet begin(Table table, Workbook workbook, String name) {
        Worksheet sheet = workbook.newWorksheet(name);
        sheet.freezePane(0, 1);
        for (int i = 0; i < table.columns().size(); i++) {
            sheet.inlineString(0, i, XlsxText.of(table.columns().get(i).title()));
            sheet.style(0, i).bold().set();
        }
        return sheet;
    }

    private static void write(Worksheet sheet, int at, List<Column> columns, List<String> row) {
        for (int i = 0; i < columns.size(); i++) {
            String cell = row.get(i);
            if (columns.get(i).number() && FormulaGuard.number(cell).isPresent()) {
                sheet.value(at, i, FormulaGuard.number(cell).get());
            } else {
                sheet.inlineString(at, i, XlsxText.of(cell));
            }
        }
    }
}
