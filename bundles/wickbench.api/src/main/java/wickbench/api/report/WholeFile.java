package wickbench.api.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that is there whole or not at all: it is written beside its place and moved there at the end.
 *
 * <p>No link is followed: one that lies in the place of either is replaced, and what it led to stays as it is.
 */
public record WholeFile(Path file) {

    /** What goes into it. */
    @FunctionalInterface
    public interface Content {
        /** Writes it, and returns false when it shall not be kept after all. */
        boolean write(OutputStream bytes) throws IOException;
    }

    /** Writes it; tells whether it was kept. */
    public boolean write(Content content) throws IOException {
        Path side = file.resolveSibling(file.getFileName() + ".part");
        try {
            boolean kept = aside(side, content);
            if (kept) {
                Files.move(side, file, StandardCopyOption.REPLACE_EXISTING);
            }
            return kept;
        } finally {
            Files.deleteIfExists(side);
        }
    }

    /** What an earlier program left behind goes, and whatever else lies there: only a new file is written to. */
    private static boolean aside(Path side, Content content) throws IOException {
        Files.deleteIfExists(side);
        try (OutputStream bytes = new BufferedOutputStream(
                Files.newOutputStream(side, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            return content.write(bytes);
        }
    }
}
