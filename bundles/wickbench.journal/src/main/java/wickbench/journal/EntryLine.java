package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.api.person.PersonId;

/** An entry as its line: the envelope's members and the body in canonical JSON (RFC 8785). */
final class EntryLine {
    private static final DateTimeFormatter AT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

    private EntryLine() {}

    /** Writes the line without its line end; the entry's own leaf hash is no part of it. */
    static byte[] write(Entry entry) {
        // the names stand in the order that RFC 8785 §3.2.3 asks for
        String line = "{\"at\":\"" + AT.format(entry.at())
                + "\",\"body\":" + entry.body().canonical()
                + ",\"by\":\"" + entry.by()
                + "\",\"id\":\"" + entry.id()
                + "\",\"kind\":" + new Json.Text(entry.kind()).canonical()
                + ",\"offset\":\"" + text(entry.offset())
                + "\",\"prev\":\"" + entry.prev()
                + "\",\"seq\":" + entry.ref().seq()
                + ",\"station\":\"" + entry.ref().station()
                + "\",\"v\":" + entry.v() + "}";
        return line.getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a line that is believed to be right, such as one below a checkpoint. */
    static Checked<Entry> read(String source, byte[] line, Hash leaf) {
        return JsonReader.read(source, line)
                .then(value -> value instanceof Json.Obj object
                        ? entry(source, object, leaf)
                        : Checked.bad(Complaint.of(source, "expected an object")));
    }

    /** Reads a line and refuses it unless it is, to the byte, what {@link #write} writes. */
    static Checked<Entry> readStrictly(String source, byte[] line, Hash leaf) {
        return read(source, line, leaf)
                .then(entry -> Arrays.equals(write(entry), line)
                        ? Checked.good(entry)
                        : Checked.bad(Complaint.of(source, "not in canonical form")));
    }

    /**
     * Reads a line that {@link #write} has just made and refuses it unless it says what was to be written.
     *
     * <p>As much as {@link #readStrictly} asks, for entries that are equal are written equally, and less work.
     *
     * @param written but for its leaf hash, which was not known before
     */
    static Checked<Entry> readBack(Entry written, Leaf line) {
        String source = written.ref().toString();
        return read(source, line.line(), line.hash())
                .then(entry -> entry.equals(written.withLeaf(line.hash()))
                        ? Checked.good(entry)
                        : Checked.bad(Complaint.of(source, "does not read as it was to be written")));
    }

    private static Checked<Entry> entry(String source, Json.Obj object, Hash leaf) {
        Fields fields = Fields.of(source, object);
        Optional<EntryRef> ref = ref(fields);
        Optional<UUID> id = needed(fields, "id", fields.optional("id", UUID::fromString));
        Optional<Hash> prev = needed(fields, "prev", fields.optional("prev", Hash::new));
        Optional<Instant> at = needed(fields, "at", fields.optionalInstant("at"));
        Optional<ZoneOffset> offset = needed(fields, "offset", fields.optional("offset", EntryLine::offset));
        Optional<PersonId> by = needed(fields, "by", fields.optional("by", PersonId::new));
        String kind = fields.text("kind");
        int v = version(fields);
        Optional<Json.Obj> body = needed(fields, "body", body(fields, object));
        return fields.finish(() -> new Entry(
                ref.orElseThrow(),
                id.orElseThrow(),
                prev.orElseThrow(),
                at.orElseThrow(),
                offset.orElseThrow(),
                by.orElseThrow(),
                kind,
                v,
                body.orElseThrow(),
                leaf));
    }

    private static Optional<EntryRef> ref(Fields fields) {
        Optional<StationId> station = needed(fields, "station", fields.optional("station", StationId::new));
        long seq = fields.whole("seq");
        if (seq < 0) {
            fields.complain("seq", "expected a place from 0 on");
        }
        return station.filter(s -> seq >= 0).map(s -> new EntryRef(s, seq));
    }

    private static int version(Fields fields) {
        long v = fields.whole("v");
        if (v < 1 || v > Integer.MAX_VALUE) {
            fields.complain("v", "expected a version from 1 on");
        }
        return (int) v;
    }

    private static Optional<Json.Obj> body(Fields fields, Json.Obj object) {
        fields.has("body");
        return object.get("body").filter(Json.Obj.class::isInstance).map(Json.Obj.class::cast);
    }

    private static <T> Optional<T> needed(Fields fields, String name, Optional<T> value) {
        if (value.isEmpty()) {
            fields.complain(name, "is missing or not understood");
        }
        return value;
    }

    private static String text(ZoneOffset offset) {
        return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }

    private static ZoneOffset offset(String text) {
        try {
            return ZoneOffset.of(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("expected an offset such as +01:00, found " + text, e);
        }
    }
}
