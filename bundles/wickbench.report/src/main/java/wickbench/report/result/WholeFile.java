package wickbench.report.result;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that is there whole or not at all: it is written beside its place and moved there at the end. */
record WholeFile(Path file) {

    /** What goes into it. */
    interface Content {
        void write(OutputStream bytes) throws IOException;
    }

    void write(Content content) throws IOException {
        Path side = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream bytes = new BufferedOutputStream(Files.newOutputStream(side))) {
                content.write(bytes);
            }
            Files.move(side, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(side);
        }
    }
}
