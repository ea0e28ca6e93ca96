package wickbench.parts;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import wickbench.parts.archive.MakerKey;
import wickbench.parts.archive.SetPacking;

/** A product of a few tiny bundles, laid for one test, and sets signed for it. */
public final class SmallProduct {
    private final Path folder;
    private final MakerKey key;

    /** Lays one whose base has a single bundle, which exports {@code ground}. */
    public SmallProduct(Path folder) {
        this.folder = folder;
        write(folder.resolve("makers/.keep"), new byte[0]);
        MakerKey.make(folder.resolve("secret"), folder.resolve("makers/site.pem"));
        key = MakerKey.read(folder.resolve("secret"));
        holds("base", "0.1.0", Map.of("ground", List.of("Export-Package: ground")));
    }

    public Path folder() {
        return folder;
    }

    /** Lets the product hold a set of these bundles, each with its manifest lines. */
    public SmallProduct holds(String name, String version, Map<String, List<String>> bundles) {
        write(folder.resolve("features/" + name + ".json"), feature(name, version, "0.1.0", bundles));
        bundles.forEach((bundle, lines) -> write(
                folder.resolve("repo/test/" + bundle + "/" + version + "/" + bundle + "-" + version + ".jar"),
                jar(bundle, lines)));
        return this;
    }

    /** Packs and signs a set for this product, in a file of its own. */
    public Path signed(String name, String version, Map<String, List<String>> bundles) {
        return signed(name, version, "0.1.0", bundles);
    }

    /** Packs and signs a set that asks for that version of the base. */
    public Path signed(String name, String version, String base, Map<String, List<String>> bundles) {
        Map<String, byte[]> jars = new TreeMap<>();
        bundles.forEach((bundle, lines) -> jars.put(bundle + "-" + version + ".jar", jar(bundle, lines)));
        return write(
                folder.resolve("sets/" + name + "-" + version + ".zip"),
                SetPacking.pack(feature(name, version, base, bundles), jars, key));
    }

    /** Signs what has just those bytes as its feature, and one bundle. */
    public Path signed(String file, byte[] feature, Map<String, byte[]> jars) {
        return write(folder.resolve("sets/" + file), SetPacking.pack(feature, jars, key));
    }

    private static byte[] feature(String name, String version, String base, Map<String, List<String>> bundles) {
        String entries = bundles.keySet().stream()
                .sorted()
                .map(bundle -> "{\"id\": \"test:" + bundle + ":" + version + "\"}")
                .collect(Collectors.joining(","));
        String required = name.equals("base") ? "" : "{\"id\": \"test:base:osgifeature:" + base + "\"}";
        return """
                {"feature-resource-version": "1.0", "id": "test:%s:osgifeature:%s", "name": "The %s", "bundles": [%s],
                 "extensions": {"wickbench-requires": {"type": "artifacts", "kind": "mandatory", "artifacts": [%s]}}}
                """.formatted(name, version, name, entries, required).getBytes(StandardCharsets.UTF_8);
    }

    /** The class that a line {@code Bundle-Activator} names goes into the jar. */
    public static byte[] jar(String name, List<String> lines) {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", name);
        lines.forEach(line -> main.putValue(line.split(": ", 2)[0], line.split(": ", 2)[1]));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JarOutputStream jar = new JarOutputStream(out, manifest)) {
            String activator = main.getValue("Bundle-Activator");
            if (activator != null) {
                String entry = activator.replace('.', '/') + ".class";
                jar.putNextEntry(new JarEntry(entry));
                SmallProduct.class.getClassLoader().getResourceAsStream(entry).transferTo(jar);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static Path write(Path file, byte[] bytes) {
        try {
            Files.createDirectories(file.getParent());
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
