package wickbench.api.attachment;

import java.time.Instant;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;

/**
 * A file that was added to an entry.
 *
 * @param entry the entry by which it was added
 * @param content SHA-256 of its bytes
 * @param size in bytes
 * @param name safe on every system, see {@link FileName}
 * @param about the entry that it belongs to
 */
public record Attachment(
        EntryRef entry,
        Hash content,
        long size,
        MediaType type,
        FileName name,
        EntryRef about,
        PersonId by,
        Instant at) {}
