package wickbench.report.sheet;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.check.Refusal;
import wickbench.api.report.Csv;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section.Table;
import wickbench.report.ReportWords;

/** Prints the table of a report as CSV; refuses a report with none or several, because such a file holds one. */
@Component(property = ReportPrinter.MEDIA_TYPE + "=" + ReportPrinter.CSV)
public final class CsvPrinter implements ReportPrinter {

    @Activate
    public CsvPrinter() {
        // needs nothing
    }

    @Override
    public String mediaType() {
        return CSV;
    }

    @Override
    public void print(Report report, OutputStream out) throws IOException {
        List<Table> tables = Tables.of(report);
        if (tables.size() != 1) {
            throw new Refusal("report.not-one-table", ReportWords.get("csv.not-one-table", tables.size()));
        }
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        writer.append(Csv.MARK);
        Csv.line(writer, tables.get(0).header());
        for (List<String> row : tables.get(0).rows()) {
            Csv.line(writer, Tables.row(tables.get(0), row).stream().map(Tables::whole).toList());
        }
        writer.flush();
    }
}
