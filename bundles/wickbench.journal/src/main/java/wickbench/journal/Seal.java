package wickbench.journal;

import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;
import wickbench.proof.Digest;
import wickbench.proof.Frontier;
import wickbench.proof.Note;
import wickbench.proof.OpenKey;

/**
 * A checkpoint as it is kept, with what lets the journal open without reading what it covers.
 *
 * @param frontier roots of the complete subtrees, the largest first
 * @param offset bytes of the newest segment that the checkpoint covers
 */
record Seal(long size, Digest root, List<Digest> frontier, long offset, String note) {
    Seal {
        frontier = List.copyOf(frontier);
    }

    static Seal sign(StationKey key, StationId station, Frontier frontier, long offset) {
        Note note = Note.sign(Origin.of(station), frontier.size(), frontier.root(), key.open(), key::sign);
        return new Seal(note.size(), note.root(), frontier.peaks(), offset, note.whole());
    }

    String line() {
        return Json.object()
                .with("size", size)
                .with("root", root.hex())
                .with("note", note)
                .with("offset", offset)
                .with("frontier", Json.texts(frontier.stream().map(Digest::hex).toList()))
                .canonical();
    }

    /** Reads a line; empty unless it is exactly what {@link #line} writes and its parts agree with one another. */
    static Optional<Seal> parse(String line) {
        return JsonReader.readObject("checkpoint", line).then(Seal::read) instanceof Checked.Good<Seal> good
                ? Optional.of(good.value()).filter(seal -> seal.line().equals(line) && seal.agrees())
                : Optional.empty();
    }

    private static Checked<Seal> read(Json.Obj object) {
        Fields fields = Fields.of("checkpoint", object);
        long size = fields.whole("size");
        Optional<Digest> root = fields.optional("root", Digest::new);
        List<String> frontier = fields.texts("frontier");
        long offset = fields.whole("offset");
        String note = fields.text("note");
        if (root.isEmpty()) {
            fields.complain("root", "expected a hash");
        }
        if (!frontier.stream().allMatch(hex -> hex.matches("[0-9a-f]{64}"))) {
            fields.complain("frontier", "expected hashes");
        }
        return fields.finish(() -> new Seal(
                size, root.orElseThrow(), frontier.stream().map(Digest::new).toList(), offset, note));
    }

    private boolean agrees() {
        return Frontier.of(size, frontier).filter(f -> f.root().equals(root)).isPresent()
                && Note.parse(note)
                        .filter(n -> n.size() == size && n.root().equals(root))
                        .isPresent();
    }

    /** Tells whether the station's key signed this for this station. */
    boolean holds(OpenKey key, StationId station) {
        return Note.parse(note)
                .filter(n -> n.origin().equals(Origin.of(station)) && n.signedBy(key))
                .isPresent();
    }

    Frontier startingPoint() {
        return Frontier.of(size, frontier).orElseThrow();
    }

    Checkpoint checkpoint(StationId station) {
        return new Checkpoint(station, size, new Hash(root.hex()), note);
    }
}
