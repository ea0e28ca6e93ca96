package wickbench.ledger.services;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.report.PrintedReport;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;

/** Prints a report into a file whose ending names the form. */
record Printing(List<ReportPrinter> printers) {
    void print(Report report, Path out) {
        String form = form(out);
        ReportPrinter printer = PrintedReport.printer(form, printers)
                .orElseThrow(() -> new Refusal("ledger.no-printer", LedgerWords.get("export.no-printer", form)));
        try {
            new PrintedReport(report, out).by(printer);
        } catch (IOException e) {
            throw new BadInput(Complaint.of(out.toString(), LedgerWords.get("export.unwritable", e.getMessage())));
        }
    }

    /** Returns the media type that a file's ending asks for. */
    static String form(Path out) {
        return PrintedReport.form(out)
                .orElseThrow(
                        () -> new BadInput(Complaint.of("--out", LedgerWords.get("export.form", out.getFileName()))));
    }
}
