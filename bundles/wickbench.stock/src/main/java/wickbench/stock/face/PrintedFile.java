package wickbench.stock.face;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.WholeFile;

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
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(media))
                .findFirst()
                .orElseThrow(() -> Typed.wrong(option, "out.no-printer", media));
        try {
            new WholeFile(out).write(bytes -> {
                printer.print(report, bytes);
                return true;
            });
        } catch (IOException e) {
            throw Typed.wrong(option, "file.unwritable", e.getMessage());
        }
    }

    private static String media(Path out) {
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "pdf" -> ReportPrinter.PDF;
            case "csv" -> ReportPrinter.CSV;
            case "xlsx" -> ReportPrinter.XLSX;
            case "jsonl" -> ReportPrinter.JSON_LINES;
            default -> throw Typed.wrong(OUT, "out.ending", out.getFileName());
        };
    }
}
