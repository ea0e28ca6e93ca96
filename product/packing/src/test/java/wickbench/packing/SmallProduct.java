package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import wickbench.launcher.Product;

/** A product of a few small files: a base with a window fragment for each platform, one of them signed, and two features on it. */
record SmallProduct(Path folder) {

    private static final String REQUIRES_BASE = """
        , "extensions": {"wickbench-requires": {"type": "artifacts", "kind": "mandatory",
        "artifacts": [{"id": "test:base:osgifeature:1"}]}}\
        """;

    Product lay() throws IOException {
        var entries = new StringBuilder("{\"id\": \"test:ground:1\"}");
        bundle("ground", Map.of());
        for (Target target : Target.all()) {
            String os = target.platform().os();
            String arch = target.platform().arch();
            entries.append(", {\"id\": \"test:window.%1$s.%2$s:1\", \"os\": \"%1$s\", \"arch\": \"%2$s\"}"
                    .formatted(os, arch));
            bundle(
                    "window." + os + "." + arch,
                    Map.of("Fragment-Host", "org.eclipse.swt;bundle-version=1", "SWT-OS", os, "SWT-Arch", arch),
                    "META-INF/SOMEBODY.SF");
        }
        feature("base", entries.toString(), "");
        for (String name : List.of("stock", "training")) {
            bundle(name, Map.of());
            feature(name, "{\"id\": \"test:%s:1\"}".formatted(name), REQUIRES_BASE);
        }
        for (String script : List.of("bin/wickbench", "bin/wickbench.cmd")) {
            file(script, "start").toFile().setExecutable(true);
        }
        file("lib/launcher.jar", "launcher");
        file("demo/plant.json", "{}");
        file("docs/guide.md", "# Guide\n![](pictures/shown.png)\n");
        file("docs/pictures/shown.png", "shown");
        file("docs/pictures/other.png", "other");
        return Product.of(folder);
    }

    /** The edition of this feature alone. */
    Edition edition(String feature) throws IOException {
        file("editions/room.json", """
            {"id": "test:complete:osgifeature:${project.version}", "name": "The room", "extensions": {"wickbench-requires":
            {"type": "artifacts", "kind": "mandatory", "artifacts": [{"id": "test:%s:osgifeature:${project.version}"}]}}}\
            """.formatted(feature));
        return Edition.all(folder.resolve("editions"), Product.of(folder)).get(0);
    }

    private void feature(String name, String bundles, String rest) throws IOException {
        file(
                "features/" + name + ".json",
                "{\"id\": \"test:%1$s:osgifeature:1\", \"bundles\": [%2$s]%3$s}".formatted(name, bundles, rest));
    }

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private void bundle(String name, Map<String, String> headers, String... entries) throws IOException {
        var manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        headers.forEach(manifest.getMainAttributes()::putValue);
        Path jar = folder.resolve("repo/test/%1$s/1/%1$s-1.jar".formatted(name));
        Files.createDirectories(jar.getParent());
        try (var out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
            for (String entry : entries) {
                out.putNextEntry(new ZipEntry(entry));
            }
            out.putNextEntry(new ZipEntry("word.txt"));
            out.write(name.getBytes());
        }
    }
}
