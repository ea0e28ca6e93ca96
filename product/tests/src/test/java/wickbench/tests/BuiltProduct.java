package wickbench.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The product folder as the build laid it. */
final class BuiltProduct {

    private BuiltProduct() {}

    static Path folder() {
        Path folder = Path.of(System.getProperty("wickbench.product")).normalize();
        if (!Files.isDirectory(folder.resolve("repo"))) {
            throw new IllegalStateException(folder + " is not laid yet: build product/dist first (mvn package)");
        }
        return folder;
    }

    /** The jars of all bundles in the product. */
    static List<Path> jars() {
        return jarsBelow(folder().resolve("repo"));
    }

    /** The jars of the house: its own bundles, neither their languages nor those of third parties. */
    static List<Path> houseJars() {
        return ownJars().filter(jar -> classifier(jar).isEmpty()).toList();
    }

    /** The fragments of the house that hold the words of a language, by its code. */
    static List<Path> languageJars(String code) {
        return ownJars().filter(jar -> classifier(jar).equals("-" + code)).toList();
    }

    private static Stream<Path> ownJars() {
        return jarsBelow(folder().resolve("repo/wickbench")).stream()
                .filter(jar -> jar.getFileName().toString().startsWith("wickbench."));
    }

    /** What a jar's name has after artifact and version. */
    private static String classifier(Path jar) {
        Path version = jar.getParent();
        String plain = version.getParent().getFileName() + "-" + version.getFileName();
        return jar.getFileName().toString().replaceFirst("\\.jar$", "").substring(plain.length());
    }

    private static List<Path> jarsBelow(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(".jar")).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
