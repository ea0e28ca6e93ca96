package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureBundle;
import wickbench.launcher.Product;

/** The features and the bundles in the product are the same list. */
class FeaturesTest {

    private final Product product = Product.of(BuiltProduct.folder());

    @Test
    void every_bundle_that_a_feature_names_is_there_and_every_bundle_there_is_named() throws IOException {
        Set<Path> named = features()
                .flatMap(feature -> feature.getBundles().stream())
                .map(FeatureBundle::getID)
                .map(product::jar)
                .collect(Collectors.toSet());
        assertThat(named)
                .containsExactlyInAnyOrderElementsOf(
                        BuiltProduct.jars().stream().map(Path::toAbsolutePath).toList());
    }

    @Test
    void no_bundle_is_named_twice() throws IOException {
        assertThat(features().flatMap(feature -> feature.getBundles().stream()).map(FeatureBundle::getID))
                .doesNotHaveDuplicates();
    }

    @Test
    void complete_requires_every_optional_feature() throws IOException {
        Feature complete = features()
                .filter(feature -> feature.getID().getArtifactId().equals("complete"))
                .findFirst()
                .orElseThrow();
        assertThat(complete.getExtensions().get("wickbench-requires").getArtifacts())
                .extracting(artifact -> artifact.getID().getArtifactId())
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(InstallSets.OPTIONAL.stream(), InstallSets.LANGUAGES.stream())
                                .toList());
    }

    private Stream<Feature> features() throws IOException {
        try (Stream<Path> files = Files.list(BuiltProduct.folder().resolve("features"))) {
            return files.sorted().map(this::read).toList().stream();
        }
    }

    private Feature read(Path file) {
        try (var text = Files.newBufferedReader(file)) {
            return product.reader().readFeature(text);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
