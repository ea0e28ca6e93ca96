package wickbench.api.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.json.JsonReader;

/**
 * What is set for one home, in its file {@code settings.json}; the schema is {@code docs/formats/settings-1.schema.json}.
 *
 * <p>Settings say how this machine works and are no record: what matters to the site stands in the journal.
 *
 * @param share the folder through which the stations of a site read one another's journals; empty when this one works alone
 */
public record Settings(Optional<Path> share) {
    private static final String FILE = "settings.json";

    /** Returns the settings of a home where nothing is set. */
    public static Settings none() {
        return new Settings(Optional.empty());
    }

    /**
     * Reads the settings of a home; one without the file has none.
     *
     * @throws wickbench.api.check.BadInput when the file is not understood
     */
    public static Settings read(Path home) {
        Path file = home.resolve(FILE);
        if (!Files.exists(file)) {
            return none();
        }
        try {
            String text = Files.readString(file);
            return JsonReader.readObject(file.toString(), text)
                    .then(object -> {
                        Fields fields = Fields.of(file.toString(), object);
                        Optional<Path> share = fields.optional("share", Path::of);
                        return fields.finish(() -> new Settings(share));
                    })
                    .orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts these settings in place of the older ones. */
    public void write(Path home) {
        Path file = home.resolve(FILE);
        Path beside = home.resolve(FILE + ".new");
        Json.Obj object = Json.object().withText("share", share.map(Path::toString));
        try {
            Files.createDirectories(home);
            Files.write(beside, (object.canonical() + "\n").getBytes(StandardCharsets.UTF_8));
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
