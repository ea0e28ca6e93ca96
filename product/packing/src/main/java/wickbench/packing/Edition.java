package wickbench.packing;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.osgi.service.feature.Feature;
import wickbench.launcher.Product;

/**
 * One way to cut the product: a feature that takes the place of {@code complete}.
 *
 * @param name of its file, folder and archive, such as {@code training-room}
 * @param title what people call it
 * @param version of the product that it is cut from
 * @param requires names of the features that it starts
 * @param text its feature file
 */
record Edition(String name, String title, String version, List<String> requires, String text) {

    private static final String SUFFIX = ".json";
    private static final String VERSION = "${project.version}";

    /** All editions whose files lie in {@code folder}, by name. */
    static List<Edition> all(Path folder, Product product) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> sorted = files.filter(file -> file.toString().endsWith(SUFFIX))
                    .sorted()
                    .toList();
            var editions = new ArrayList<Edition>();
            for (Path file : sorted) {
                editions.add(read(file, product));
            }
            return List.copyOf(editions);
        }
    }

    private static Edition read(Path file, Product product) throws IOException {
        String version = version(product);
        String text = Files.readString(file).replace(VERSION, version);
        Feature feature = product.reader().readFeature(new StringReader(text));
        List<String> requires = feature.getExtensions().get("wickbench-requires").getArtifacts().stream()
                .map(artifact -> artifact.getID().getArtifactId())
                .toList();
        String name = file.getFileName().toString();
        return new Edition(
                name.substring(0, name.length() - SUFFIX.length()),
                feature.getName().orElseThrow(),
                version,
                requires,
                text);
    }

    private static String version(Product product) throws IOException {
        try (var text = Files.newBufferedReader(product.folder().resolve("features/base.json"))) {
            return product.reader().readFeature(text).getID().getVersion();
        }
    }
}
