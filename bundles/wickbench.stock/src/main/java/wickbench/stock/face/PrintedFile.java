package wickbench.stock.face;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;

/** Prints a report into a file, whole or not at all; the file's ending chooses the form. */
final class PrintedFile {
    private PrintedFile() {}

    static void write(Path out, List<ReportPrinter> printers, Report report) {
        String media = media(out);
        ReportPrinter printer = printers.stream()
                .filter(each -> each.mediaType().equals(media))
                .findFirst()
                .orElseThrow(() -> Typed.wrong("--out", "out.no-printer", media));
        Path part = out.resolveSibling(out.getFileName() + ".part");
        try {
            try (OutputStream stream = Files.newOutputStream(part)) {
                printer.print(report, stream);
            }
            Files.move(part, out, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw Typed.wrong("--out", "file.unwritable", e.getMessage());
        }
    }

    private static String media(Path out) {
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "pdf" -> ReportPrinter.PDF;
            case "csv" -> ReportPrinter.CSV;
            case "xlsx" -> ReportPrinter.XLSX;
            case "jsonl" -> ReportPrinter.JSON_LINES;
            default -> throw Typed.wrong("--out", "out.ending", out.getFileName());
        };
    }
}
