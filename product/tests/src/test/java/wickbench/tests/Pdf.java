package wickbench.tests;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** What another program reads in a PDF. */
final class Pdf {
    private Pdf() {}

    /** Returns its text with every run of blanks as one, since lines break where they fit. */
    static String text(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("pdftotext", "-raw", file.toString(), "-")
                .redirectErrorStream(true)
                .start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(text);
        }
        return text.replaceAll("\\s+", " ");
    }
}
