package wickbench.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the manifest of a built bundle says. */
record BundleManifest(String artifact, String symbolicName, Set<String> imports, Set<String> exports) {

    static BundleManifest of(Path jar) {
        try (var file = new JarFile(jar.toFile())) {
            Manifest manifest = file.getManifest();
            String artifact = jar.getParent().getParent().getFileName().toString();
            String name = manifest.getMainAttributes().getValue("Bundle-SymbolicName");
            return new BundleManifest(
                    artifact,
                    name.split(";")[0].strip(),
                    names(manifest, "Import-Package"),
                    names(manifest, "Export-Package"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Imports that neither the Java platform's own {@code java.} packages nor this bundle itself can serve. */
    Set<String> foreignImports() {
        var foreign = new TreeSet<>(imports);
        foreign.removeIf(name -> name.startsWith("java.") || exports.contains(name));
        return foreign;
    }

    private static Set<String> names(Manifest manifest, String header) {
        String value = Optional.ofNullable(manifest.getMainAttributes().getValue(header))
                .orElse("");
        // quoted values hold commas of their own
        return Stream.of(value.replaceAll("\"[^\"]*\"", "").split(","))
                .map(clause -> clause.split(";")[0].strip())
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
