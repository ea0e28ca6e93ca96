package wickbench.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Heading;
import wickbench.report.pdf.PdfPrinter;
import wickbench.report.sheet.CsvPrinter;
import wickbench.report.sheet.XlsxPrinter;

/**
 * Prints a table of results as the program does; also in a process of its own: {@code HOME TABLE OUT}.
 *
 * <p>The ending of the file to be made says the form. PDF has a chart beside the table.
 */
public final class Printing {
    private Printing() {}

    public static void main(String[] arguments) throws IOException {
        Path out = Path.of(arguments[2]);
        SampleTable table = new SampleTable(Path.of(arguments[1]));
        if (out.toString().endsWith(".pdf")) {
            try (Site site = new Site(Path.of(arguments[0]))) {
                pdf(new PdfPrinter(site.home, site.journal, site::facts), table, out);
            }
        } else {
            sheet(out.toString().endsWith(".csv") ? new CsvPrinter() : new XlsxPrinter(), table, out);
        }
    }

    static void pdf(PdfPrinter printer, SampleTable table, Path out) throws IOException {
        Section figure = table.figure();
        table.read(rows -> print(printer, List.of(new Heading("Results"), figure, rows), out));
    }

    private static void sheet(ReportPrinter printer, SampleTable table, Path out) throws IOException {
        table.read(rows -> print(printer, List.of(rows), out));
    }

    private static void print(ReportPrinter printer, List<Section> sections, Path out) throws IOException {
        try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(out))) {
            printer.print(new Report("Results", sections, List.of()), stream);
        }
    }
}
