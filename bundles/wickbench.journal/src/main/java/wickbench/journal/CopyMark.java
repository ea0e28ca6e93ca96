package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * The file {@code copy.json} by which the copy of another station's journal is told from this station's own.
 *
 * @param fingerprint of the key that was pinned, in hexadecimal digits
 * @param told how much of it this station's own journal has said it has seen
 */
record CopyMark(String fingerprint, long told) {
    private static final String FILE = "copy.json";

    static Path file(Path folder) {
        return folder.resolve(FILE);
    }

    static Optional<CopyMark> read(Path folder) throws IOException {
        Path file = file(folder);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        return JsonReader.readObject(file.toString(), text).then(CopyMark::of) instanceof Checked.Good<CopyMark> good
                ? Optional.of(good.value())
                : Optional.empty();
    }

    private static Checked<CopyMark> of(Json.Obj object) {
        Fields fields = Fields.of(FILE, object);
        String fingerprint = fields.text("key_fingerprint");
        long told = fields.whole("told");
        return fields.finish(() -> new CopyMark(fingerprint, told));
    }

    void write(Disk disk, Path folder) throws IOException {
        String line = Json.object()
                        .with("key_fingerprint", fingerprint)
                        .with("told", told)
                        .canonical() + "\n";
        disk.place(file(folder), line.getBytes(StandardCharsets.UTF_8));
    }
}
