package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A Java that holds only what the bundles ask for. */
final class JavaRuntime {

    /**
     * Besides {@code java.base}: what {@code jdeps} finds in the bundles, less what nobody here calls (the database's compilers and scripts).
     *
     * <p>{@code java.desktop} draws charts and pages of paper; {@code jdk.crypto.ec} makes the signatures of checkpoints; {@code jdk.net} tells
     * who knocks; {@code jdk.unsupported} gives back mapped memory; {@code jdk.localedata} writes dates as the system's language does.
     */
    private static final List<String> MODULES = List.of(
            "java.desktop",
            "java.logging",
            "java.management",
            "java.naming",
            "java.sql",
            "java.xml",
            "jdk.crypto.ec",
            "jdk.localedata",
            "jdk.net",
            "jdk.unsupported");

    private JavaRuntime() {}

    /**
     * Makes it in {@code folder}, which must not be there yet; takes some seconds.
     *
     * <p>In a process of its own: part of what is made is taken from the program that makes it, and ours is never twice in the same state.
     */
    static void make(Path folder) throws IOException, InterruptedException {
        Path said = Files.createTempFile("jlink", ".txt");
        try {
            int code = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "jlink")
                                    .toString(),
                            "--add-modules",
                            String.join(",", MODULES),
                            "--include-locales=en,es",
                            "--strip-java-debug-attributes",
                            "--no-header-files",
                            "--no-man-pages",
                            "--compress=2",
                            "--output",
                            folder.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start()
                    .waitFor();
            if (code != 0) {
                throw new IOException(
                        "jlink made no Java: " + Files.readString(said).strip());
            }
        } finally {
            Files.delete(said);
        }
    }
}
