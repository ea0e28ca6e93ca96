package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * The file {@code writer.json} of a station in the shared folder: which run of the program writes there now, with a number that
 * grows while it lives. Two that live at the same time are two machines under one name.
 */
record WriterMark(UUID run, long beat) {

    static Optional<WriterMark> read(Path folder) throws IOException {
        Path file = folder.resolve(ShareFolder.WRITER);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        return JsonReader.readObject(file.toString(), text).then(WriterMark::of)
                        instanceof Checked.Good<WriterMark> good
                ? Optional.of(good.value())
                : Optional.empty();
    }

    private static Checked<WriterMark> of(Json.Obj object) {
        Fields fields = Fields.of(ShareFolder.WRITER, object);
        Optional<UUID> run = fields.optional("run", UUID::fromString);
        long beat = fields.whole("beat");
        if (run.isEmpty()) {
            fields.complain("run", "expected a UUID");
        }
        return fields.finish(() -> new WriterMark(run.orElseThrow(), beat));
    }

    void write(Disk disk, Path folder) throws IOException {
        String line =
                Json.object().with("run", run.toString()).with("beat", beat).canonical() + "\n";
        disk.place(folder.resolve(ShareFolder.WRITER), line.getBytes(StandardCharsets.UTF_8));
    }
}
