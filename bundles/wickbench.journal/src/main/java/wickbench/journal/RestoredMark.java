package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import wickbench.api.check.Checked;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * The file {@code restored.json} of a home that was made from a back-up; the first thing recorded there is that it was.
 *
 * <p>Not recorded at once: as long as nothing is, entries that came after the back-up can still be fetched from elsewhere, and the
 * history goes on as if nothing had happened. What is recorded instead begins a second branch.
 */
record RestoredMark(Json.Obj body) {
    static final String FILE = "restored.json";
    static final String KIND = "journal.restored";
    static final int V = 1;

    static RestoredMark of(Manifest manifest) {
        return new RestoredMark(Json.object()
                .with("made", manifest.made().toString())
                .with("entries", manifest.checkpoint().size())
                .with("root", manifest.checkpoint().root().hex()));
    }

    /** Returns the mark of a home; empty where there is none or it was recorded. */
    static Optional<RestoredMark> read(Path home) throws IOException {
        Path file = home.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        return JsonReader.readObject(FILE, Files.readString(file)) instanceof Checked.Good<Json.Obj> good
                ? Optional.of(new RestoredMark(good.value()))
                : Optional.empty();
    }

    /** Returns the entry that says so. */
    Draft draft(UUID id) {
        return new Draft(id, OwnStation.JOURNAL, KIND, V, body);
    }

    /** Removes the mark once it is recorded; one that stays is only recorded once more. */
    void remove(Path home, Consumer<String> notices) {
        try {
            Files.delete(home.resolve(FILE));
        } catch (IOException e) {
            notices.accept(Say.words("failed.write", home, EntryFiles.reason(e)));
        }
    }

    byte[] bytes() {
        return (body.canonical() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    String notice() {
        return Say.words("restored", text("made"), text("entries"));
    }

    private String text(String member) {
        return body.get(member)
                .map(value -> value instanceof Json.Text text ? text.value() : value.canonical())
                .orElse("?");
    }
}
