package wickbench.report.result;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;
import wickbench.report.ReportWords;

/** Writes a report into a file, in the form that its ending names; PDF where it names none. */
record ReportFile(List<ReportPrinter> printers) {
    private static final Map<String, String> FORMS = Map.of(
            ".csv", ReportPrinter.CSV,
            ".xlsx", ReportPrinter.XLSX,
            ".jsonl", ReportPrinter.JSON_LINES);

    void write(Report report, Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        String form = FORMS.entrySet().stream()
                .filter(each -> name.endsWith(each.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(ReportPrinter.PDF);
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(form))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("this bundle prints " + form));
        try {
            new WholeFile(file).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
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
