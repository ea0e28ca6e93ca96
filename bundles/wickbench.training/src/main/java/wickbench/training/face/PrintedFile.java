package wickbench.training.face;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.report.PrintedReport;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.training.book.Said;

/** Prints a report into a file, whole or not at all; the file's ending chooses the form. */
final class PrintedFile {
    private PrintedFile() {}

    static void write(Path out, List<ReportPrinter> printers, Report report) {
        String media = media(out);
        ReportPrinter printer =
                PrintedReport.printer(media, printers).orElseThrow(() -> Said.wrong("--out", "out.no-printer", media));
        try {
            new PrintedReport(report, out).by(printer);
        } catch (IOException e) {
            throw Said.wrong("--out", "file.unwritable", e.getMessage());
        }
    }

    private static String media(Path out) {
        return PrintedReport.form(out).orElseThrow(() -> Said.wrong("--out", "out.ending", out.getFileName()));
    }
}
