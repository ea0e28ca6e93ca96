package wickbench.stock.face;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.report.PrintedReport;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;

/** Prints a report into a file, whole or not at all; the file's ending chooses the form. */
final class PrintedFile {
    private static final String OUT = "--out";

    private PrintedFile() {}

    static void write(Path out, List<ReportPrinter> printers, Report report) {
        write(OUT, out, media(out), printers, report);
    }

    /**
     * Prints in a form that is asked for.
     *
     * @param option which option named the file
     */
    static void write(String option, Path out, String media, List<ReportPrinter> printers, Report report) {
        ReportPrinter printer =
                PrintedReport.printer(media, printers).orElseThrow(() -> Typed.wrong(option, "out.no-printer", media));
        try {
            new PrintedReport(report, out).by(printer);
        } catch (IOException e) {
            throw Typed.wrong(option, "file.unwritable", e.getMessage());
        }
    }

    private static String media(Path out) {
        return PrintedReport.form(out).orElseThrow(() -> Typed.wrong(OUT, "out.ending", out.getFileName()));
    }
}
