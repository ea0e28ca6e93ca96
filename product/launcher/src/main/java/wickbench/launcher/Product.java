package wickbench.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ServiceLoader;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureService;
import org.osgi.service.feature.ID;

/**
 * The product folder: {@code features/NAME.json} says what can be installed, {@code repo/} holds the bundles in Maven layout.
 */
public record Product(Path folder, FeatureService reader) {

    /** The product that lies in {@code folder}. */
    public static Product of(Path folder) {
        return new Product(
                folder.toAbsolutePath().normalize(),
                ServiceLoader.load(FeatureService.class).findFirst().orElseThrow());
    }

    /** The feature of this name, as its file says. */
    Feature feature(String name) throws CannotStart {
        Path file = folder.resolve("features").resolve(name + ".json");
        if (!Files.isRegularFile(file)) {
            throw new CannotStart("there is no feature \"" + name + "\": " + file + " is missing");
        }
        try (var text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return reader.readFeature(text);
        } catch (IOException | RuntimeException broken) {
            throw new CannotStart(file + " is not a feature: " + broken.getMessage());
        }
    }

    /** Where the jar of this bundle stands, or should stand. */
    public Path jar(ID id) {
        String classifier = id.getClassifier().map(name -> "-" + name).orElse("");
        return folder.resolve("repo")
                .resolve(id.getGroupId().replace('.', '/'))
                .resolve(id.getArtifactId())
                .resolve(id.getVersion())
                .resolve(id.getArtifactId() + "-" + id.getVersion() + classifier + ".jar");
    }
}
