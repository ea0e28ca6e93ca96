package wickbench.api.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A report in a file, whole or not at all; the file's ending names the form: .pdf, .xlsx, .csv or .jsonl. */
public record PrintedReport(Report report, Path file) {
    private static final Map<String, String> FORMS = Map.of(
            ".csv", ReportPrinter.CSV,
            ".xlsx", ReportPrinter.XLSX,
            ".jsonl", ReportPrinter.JSON_LINES,
            ".pdf", ReportPrinter.PDF);

    /** Returns the media type that a file's ending names; empty when it names none. */
    public static Optional<String> form(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return FORMS.entrySet().stream()
                .filter(form -> name.endsWith(form.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Returns who prints a form; empty when nobody here does. */
    public static Optional<ReportPrinter> printer(String form, List<ReportPrinter> among) {
        return among.stream().filter(each -> each.mediaType().equals(form)).findFirst();
    }

    /** Prints it, whatever the ending says. */
    public void by(ReportPrinter printer) throws IOException {
        new WholeFile(file).write(bytes -> {
            printer.print(report, bytes);
            return true;
        });
    }
}
