package wickbench.ledger.services;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;

/** Prints a report into a file whose ending names the form. */
record Printing(List<ReportPrinter> printers) {
    private static final Map<String, String> FORMS = Map.of(
            ".csv", ReportPrinter.CSV,
            ".xlsx", ReportPrinter.XLSX,
            ".jsonl", ReportPrinter.JSON_LINES,
            ".pdf", ReportPrinter.PDF);

    void print(Report report, Path out) {
        String form = form(out);
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(form))
                .findFirst()
                .orElseThrow(() -> new Refusal("ledger.no-printer", LedgerWords.get("export.no-printer", form)));
        try {
            new WholeFile(out).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw new BadInput(Complaint.of(out.toString(), LedgerWords.get("export.unwritable", e.getMessage())));
        }
    }

    /** Returns the media type that a file's ending asks for. */
    static String form(Path out) {
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        return FORMS.entrySet().stream()
                .filter(form -> name.endsWith(form.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new BadInput(Complaint.of("--out", LedgerWords.get("export.form", name))));
    }
}
