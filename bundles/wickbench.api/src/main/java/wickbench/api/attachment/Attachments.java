package wickbench.api.attachment;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** Files that belong to entries. Safe for use by several threads. */
@ProviderType
public interface Attachments {

    /** A file is refused when it has more bytes. */
    long MOST_BYTES = 64L << 20;

    /**
     * An attachment, and whether this call added it.
     *
     * @param added false when the same bytes were added to the same entry before
     */
    record Kept(Attachment attachment, boolean added) {}

    /**
     * Adds a file to an entry.
     *
     * @param content read once and not closed
     * @param name what the file was called; made safe
     * @throws wickbench.api.check.BadInput when it is empty, too large, of no type that may be attached, cut short, or two kinds
     *     of file at once, and when there is no such entry; nothing is kept then
     */
    Kept add(InputStream content, String name, EntryRef about, PersonId by);

    /**
     * Says what a file is before it is added; nothing is kept and nothing decoded.
     *
     * @param content read once and not closed
     * @param name what the file was called
     * @throws wickbench.api.check.BadInput as {@link #add} does
     */
    Looked look(InputStream content, String name);

    /**
     * What a file turned out to be.
     *
     * @param content SHA-256 of its bytes
     * @param picture what its header says; empty for what is no picture
     */
    record Looked(Hash content, MediaType type, Optional<Picture> picture) {}

    /** Returns what was added to an entry, in the order of adding. */
    List<Attachment> of(EntryRef about);

    /** Returns everything that was added with these bytes; empty when nothing was. */
    List<Attachment> with(Hash content);

    /**
     * Opens a file after proving that its bytes are those that were added.
     *
     * @return the bytes; closed by the caller
     * @throws wickbench.api.check.Refusal {@code attachment.missing}, {@code attachment.altered}, {@code attachment.unknown}
     */
    InputStream open(Hash content);

    /** Returns what the header of a picture says; empty for what is no picture. Refuses as {@link #open} does. */
    Optional<Picture> picture(Hash content);

    /** Reads every file that an entry names again, and tells how each was found, by its hash. */
    Map<Hash, AttachmentState> verify(Progress progress);
}
