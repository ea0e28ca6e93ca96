package wickbench.attachments;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import wickbench.api.attachment.FileName;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.words.Words;

/**
 * Writes a file that was not there before.
 *
 * <p>Nothing is written over and no link is followed, so a link laid out in the folder leads nobody's file astray. Into a folder
 * goes the attachment's own name, which cannot lead out of it.
 */
final class NewFile {
    private final Words words;

    NewFile(Words words) {
        this.words = words;
    }

    /** Returns where it was written: {@code out}, or within it when it is a folder. */
    Path write(InputStream in, Path out, FileName name) throws IOException {
        Path file = Files.isDirectory(out) ? out.resolve(name.value()) : out;
        if (Files.isSymbolicLink(file)) {
            throw new BadInput(Complaint.of(file.toString(), words.get("file.link")));
        }
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new BadInput(Complaint.of(file.toString(), words.get("file.there")));
        }
        try (OutputStream to = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            in.transferTo(to);
        }
        return file;
    }
}
