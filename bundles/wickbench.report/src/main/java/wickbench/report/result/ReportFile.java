package wickbench.report.result;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.report.PrintedReport;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.report.ReportWords;

/** Writes a report into a file, in the form that its ending names; PDF where it names none. */
record ReportFile(List<ReportPrinter> printers) {
    void write(Report report, Path file) {
        String form = PrintedReport.form(file).orElse(ReportPrinter.PDF);
        ReportPrinter printer = PrintedReport.printer(form, printers)
                .orElseThrow(() -> new IllegalStateException("this bundle prints " + form));
        try {
            new PrintedReport(report, file).by(printer);
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), ReportWords.get("file.unwritable", reason(e))));
        }
    }

    /** Java's own message of an absent folder only repeats the file's name. */
    private static String reason(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return ReportWords.get("file.no-folder");
        }
        return failure instanceof AccessDeniedException
                ? ReportWords.get("file.denied")
                : String.valueOf(failure.getMessage());
    }
}
