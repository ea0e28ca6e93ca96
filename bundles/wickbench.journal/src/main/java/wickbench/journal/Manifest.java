package wickbench.journal;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * What a back-up says of itself; {@code docs/formats/backup-1.schema.json}.
 *
 * @param files all files of the home that are in it, in the order of their paths
 */
record Manifest(Instant made, Checkpoint checkpoint, List<Item> files) {
    static final String FILE = "backup.json";
    private static final long FORMAT = 1;

    Manifest {
        files = List.copyOf(files);
    }

    /**
     * A file.
     *
     * @param path below the home, with {@code /}
     */
    record Item(String path, long bytes, Hash sha256) {}

    byte[] bytes() {
        List<Json> items = new ArrayList<>();
        for (Item item : files) {
            items.add(Json.object()
                    .with("path", item.path())
                    .with("bytes", item.bytes())
                    .with("sha256", item.sha256().hex()));
        }
        String text = Json.object()
                .with("format", FORMAT)
                .with("made", made.toString())
                .with("station", checkpoint.station().value())
                .with("checkpoint", checkpoint.note())
                .with("files", Json.array(items))
                .canonical();
        return (text + "\n").getBytes(StandardCharsets.UTF_8);
    }

    static Checked<Manifest> read(String source, byte[] bytes) {
        return JsonReader.readObject(source, new String(bytes, StandardCharsets.UTF_8))
                .then(object -> of(source, object));
    }

    private static Checked<Manifest> of(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        if (fields.whole("format") != FORMAT) {
            fields.complain("format", "expected " + FORMAT);
        }
        Optional<Instant> made = fields.optionalInstant("made");
        Optional<StationId> station = fields.optional("station", StationId::new);
        Optional<Checkpoint> checkpoint = Claim.read(fields.text("checkpoint"))
                .filter(claim -> claim.note().isPresent()
                        && station.filter(claim.station()::equals).isPresent())
                .map(claim -> new Checkpoint(
                        claim.station(),
                        claim.size(),
                        new Hash(claim.root().hex()),
                        claim.note().orElseThrow().whole()));
        List<Item> items = new ArrayList<>();
        fields.children("files").forEach(item -> items.add(item(item)));
        if (made.isEmpty() || checkpoint.isEmpty()) {
            fields.complain("checkpoint", "is not the checkpoint of its station, or the time is missing");
        }
        return fields.finish(() -> new Manifest(made.orElseThrow(), checkpoint.orElseThrow(), items));
    }

    private static Item item(Fields fields) {
        return new Item(
                fields.text("path"),
                fields.whole("bytes"),
                fields.optional("sha256", Hash::new).orElseGet(Kept.NOTHING::leaf));
    }
}
