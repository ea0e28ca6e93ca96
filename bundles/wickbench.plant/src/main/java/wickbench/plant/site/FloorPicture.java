package wickbench.plant.site;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * The plant's own floor picture; the body of {@code floor.pictured}. The newest holds.
 *
 * @param content SHA-256 of the attached file's bytes
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 */
public record FloorPicture(Hash content, int width, int height, String name) {
    public static final String KIND = "floor.pictured";

    private static final int LARGEST = 65_535;

    public Json.Obj body() {
        return Json.object()
                .with("content", content.hex())
                .with("width", width)
                .with("height", height)
                .with("name", name);
    }

    /** Reads a body. */
    public static Checked<FloorPicture> read(Fields fields) {
        Taking taking = Taking.body(fields);
        Optional<Hash> content = taking.needed("content", Hash::new);
        int width = taking.whole("width", 1, LARGEST, Optional.empty());
        int height = taking.whole("height", 1, LARGEST, Optional.empty());
        String name = fields.text("name");
        return fields.finish(() -> new FloorPicture(content.orElseThrow(), width, height, name));
    }
}
