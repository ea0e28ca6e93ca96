package wickbench.api.journal;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * One act, as the journal keeps it.
 *
 * @param ref its identity
 * @param id for imported rows derived from their content, so that recording them again adds nothing
 * @param prev leaf hash of the entry before; of the first entry, the root of the empty tree
 * @param at when it was written, to the millisecond
 * @param offset the station's offset from UTC at that moment
 * @param by who recorded it
 * @param kind what sort of act, for example {@code reading.recorded}
 * @param v version of the body's schema
 * @param leaf RFC 9162 leaf hash of the entry's line; not part of the line itself
 */
public record Entry(
        EntryRef ref,
        UUID id,
        Hash prev,
        Instant at,
        ZoneOffset offset,
        PersonId by,
        String kind,
        int v,
        Json.Obj body,
        Hash leaf) {

    /** Tells whether this is an entry of the given kind in a version that the caller understands. */
    public boolean is(String kind, int v) {
        return this.kind.equals(kind) && this.v == v;
    }

    /** Returns this entry with the leaf hash of its line, once that is written. */
    public Entry withLeaf(Hash leaf) {
        return new Entry(ref, id, prev, at, offset, by, kind, v, body, leaf);
    }
}
