package wickbench.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** LibreOffice without a screen: another program than the writer, that opens what it wrote. */
public final class Office {
    private static final String UTF_8 = "76";

    private Office() {}

    /** Opens a file and saves its first sheet as flat OpenDocument text, in which formulas are seen as such. */
    public static String flat(Path file) throws IOException, InterruptedException {
        convert(file, "fods");
        return Files.readString(sibling(file, "fods"));
    }

    /** Opens a file and saves its first sheet as CSV, every text quoted. */
    public static String csv(Path file) throws IOException, InterruptedException {
        // separator comma, quote ", UTF-8, first line 1, no column formats, language of the file, quote all text,
        // cells as they are and not as they look
        Path copy = Files.createDirectories(file.resolveSibling("out")).resolve(file.getFileName());
        Files.copy(file, copy);
        convert(copy, "csv:Text - txt - csv (StarCalc):44,34," + UTF_8 + ",1,,0,true,false");
        return Files.readString(sibling(copy, "csv"));
    }

    private static Path sibling(Path file, String ending) {
        return file.resolveSibling(file.getFileName().toString().replaceAll("\\.[a-z]+$", "." + ending));
    }

    private static void convert(Path file, String to) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "soffice",
                "-env:UserInstallation=" + file.resolveSibling("office").toUri(),
                "--headless",
                "--convert-to",
                to,
                "--outdir",
                file.getParent().toString()));
        if (file.toString().endsWith(".csv")) {
            // separator comma, quote ", UTF-8; no column formats; quoted fields are not taken for text by that alone
            command.add(3, "--infilter=CSV:44,34," + UTF_8);
        }
        command.add(file.toString());
        Programs.run(command, 120);
    }
}
