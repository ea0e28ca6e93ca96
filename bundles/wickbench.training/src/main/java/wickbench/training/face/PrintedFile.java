package wickbench.training.face;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;
import wickbench.training.book.Said;

/** Prints a report into a file, whole or not at all; the file's ending chooses the form. */
final class PrintedFile {
    private PrintedFile() {}

    static void write(Path out, List<ReportPrinter> printers, Report report) {
        String media = media(out);
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(media))
                .findFirst()
                .orElseThrow(() -> Said.wrong("--out", "out.no-printer", media));
        try {
            new WholeFile(out).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw Said.wrong("--out", "file.unwritable", e.getMessage());
        }
    }

    private static String media(Path out) {
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "pdf" -> ReportPrinter.PDF;
            case "csv" -> ReportPrinter.CSV;
            case "xlsx" -> ReportPrinter.XLSX;
            case "jsonl" -> ReportPrinter.JSON_LINES;
            default -> throw Said.wrong("--out", "out.ending", out.getFileName());
        };
    }
}
