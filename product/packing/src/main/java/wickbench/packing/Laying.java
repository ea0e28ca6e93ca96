package wickbench.packing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import wickbench.launcher.CannotStart;
import wickbench.launcher.InstallSet;
import wickbench.launcher.Product;

/**
 * Lays one edition for one platform as a folder.
 *
 * @param product from which it is cut
 */
record Laying(Product product, Edition edition, Target target) {

    private static final int[] SIDES = {48, 256};

    /** The name of the edition with its version, so that a new one is unpacked beside the old one. */
    String root() {
        return "wickbench-" + edition.name() + "-" + edition.version();
    }

    /** Returns the edition's folder below {@code parent}, laid anew and without a Java. */
    Path below(Path parent) throws IOException, CannotStart {
        Path folder = parent.resolve(root());
        Papers.delete(folder);
        layFeatures(Files.createDirectories(folder.resolve("features")));
        layBundles(folder);
        Path script = Path.of("bin", target.script());
        Files.createDirectories(folder.resolve("bin"));
        Files.copy(product.folder().resolve(script), folder.resolve(script));
        Papers.copyFolder(product.folder().resolve("lib"), folder.resolve("lib"));
        Papers.copyFolder(product.folder().resolve("demo"), folder.resolve("demo"));
        Papers.copyDocs(product.folder().resolve("docs"), folder.resolve("docs"));
        write("README.txt", folder.resolve("README.txt"));
        laySign(Files.createDirectories(folder.resolve("share")));
        if (target.platform().os().equals("linux")) {
            write("wickbench.desktop", folder.resolve("share/wickbench-" + edition.name() + ".desktop"));
            Path menu = folder.resolve("bin/add-to-menu");
            write("add-to-menu", menu);
            if (!menu.toFile().setExecutable(true, false)) {
                throw new IOException(menu + " cannot be made executable");
            }
        }
        return folder;
    }

    private void layFeatures(Path features) throws IOException, CannotStart {
        for (String name : InstallSet.names(product, edition.requires())) {
            Files.copy(product.folder().resolve("features").resolve(name + ".json"), features.resolve(name + ".json"));
        }
        Files.writeString(features.resolve("complete.json"), edition.text());
    }

    private void layBundles(Path folder) throws IOException, CannotStart {
        for (Path jar : InstallSet.of(product, edition.requires(), target.platform())) {
            Path laid = folder.resolve(product.folder().relativize(jar).toString());
            Files.createDirectories(laid.getParent());
            UnsignedJar.copy(jar, laid);
        }
    }

    private static void laySign(Path share) throws IOException {
        Files.writeString(share.resolve("wickbench.svg"), Sign.svg());
        for (int side : SIDES) {
            Sign.png(share.resolve("wickbench-" + side + ".png"), side);
        }
    }

    /** Writes a text of this package with the words of this edition in it. */
    private void write(String name, Path file) throws IOException {
        String text;
        try (var in = Laying.class.getResourceAsStream(name)) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (var word : words().entrySet()) {
            text = text.replace("@" + word.getKey() + "@", word.getValue());
        }
        Files.writeString(file, text);
    }

    private Map<String, String> words() {
        return Map.of(
                "name", edition.name(),
                "title", edition.title(),
                "version", edition.version(),
                "script", "bin/" + target.script(),
                "java",
                        target.isHere()
                                ? "It brings the Java that it needs."
                                : "It needs Java 17 or newer on the machine, and was never run on this system by those"
                                        + " who made it.");
    }
}
