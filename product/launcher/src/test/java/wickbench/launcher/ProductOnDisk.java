package wickbench.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/** A small product folder, laid for one test. */
record ProductOnDisk(Path folder) {

    Product product() {
        return Product.of(folder);
    }

    /** A feature of these bundle entries that requires those features, all of version 1. */
    ProductOnDisk feature(String name, List<String> bundles, String... requires) {
        String required = List.of(requires).stream()
                .map(r -> entry("test:" + r + ":osgifeature:1"))
                .collect(Collectors.joining(","));
        return featureText(name, """
                {"feature-resource-version": "1.0", "id": "test:%s:osgifeature:1", "bundles": [%s],
                 "extensions": {"wickbench-requires": {"type": "artifacts", "kind": "mandatory", "artifacts": [%s]}}}
                """.formatted(name, String.join(",", bundles), required));
    }

    ProductOnDisk featureText(String name, String json) {
        return write(() -> {
            Path file = folder.resolve("features").resolve(name + ".json");
            Files.createDirectories(file.getParent());
            Files.writeString(file, json);
        });
    }

    /** A jar {@code test:NAME:1} with these manifest lines ({@code Key: value}) and the class of each type in it. */
    ProductOnDisk bundle(String name, List<String> manifest, Class<?>... types) {
        return bundle(name, "", manifest, types);
    }

    /** The same, by a classifier where that is not empty: {@code test:NAME:jar:CLASSIFIER:1}. */
    ProductOnDisk bundle(String name, String classifier, List<String> manifest, Class<?>... types) {
        return write(() -> {
            String file = name + "-1" + (classifier.isEmpty() ? "" : "-" + classifier) + ".jar";
            Path jar = folder.resolve("repo/test/" + name + "/1").resolve(file);
            Files.createDirectories(jar.getParent());
            try (var out = new JarOutputStream(Files.newOutputStream(jar), manifest(name, manifest))) {
                for (Class<?> type : types) {
                    String entry = type.getName().replace('.', '/') + ".class";
                    out.putNextEntry(new JarEntry(entry));
                    type.getClassLoader().getResourceAsStream(entry).transferTo(out);
                }
            }
        });
    }

    static String entry(String id) {
        return "{\"id\": \"" + id + "\"}";
    }

    private static Manifest manifest(String name, List<String> lines) {
        var manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", name);
        main.putValue("Bundle-Version", "1");
        lines.forEach(line -> main.putValue(line.split(": ", 2)[0], line.split(": ", 2)[1]));
        return manifest;
    }

    private ProductOnDisk write(Step step) {
        try {
            step.run();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return this;
    }

    private interface Step {
        void run() throws IOException;
    }
}
