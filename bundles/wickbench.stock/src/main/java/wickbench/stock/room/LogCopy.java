package wickbench.stock.room;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.attachment.Attachments;
import wickbench.api.check.BadInput;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/**
 * Lays a logger's file beside the entry that tells of it.
 *
 * <p>The entry names the file by its SHA-256, so it stands without the copy: what cannot be attached is told, and undoes nothing.
 */
record LogCopy(Optional<Attachments> attachments) {

    /** Attaches it once, however often it is given; returns why not, in one line. */
    Optional<String> attach(Path file, EntryRef about, PersonId by) {
        if (attachments.isEmpty()) {
            return Optional.of(StockWords.get("attach.absent"));
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (Files.size(file) > Attachments.MOST_BYTES) {
                return Optional.of(StockWords.get("attach.large", Attachments.MOST_BYTES >> 20));
            }
            attachments.get().add(in, file.getFileName().toString(), about, by);
            return Optional.empty();
        } catch (BadInput | IOException e) {
            return Optional.of(StockWords.get("attach.refused", e.getMessage()));
        }
    }
}
