package wickbench.packing;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;

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

    /** Makes it in {@code folder}, which must not be there yet; takes some seconds. */
    static void make(Path folder) throws IOException {
        var said = new StringWriter();
        var out = new PrintWriter(said);
        int code = ToolProvider.findFirst("jlink")
                .orElseThrow(() -> new IOException("this Java has no jlink; a full JDK has"))
                .run(
                        out,
                        out,
                        "--add-modules",
                        String.join(",", MODULES),
                        "--include-locales=en,es",
                        "--strip-java-debug-attributes",
                        "--no-header-files",
                        "--no-man-pages",
                        "--compress=2",
                        "--output",
                        folder.toString());
        if (code != 0) {
            throw new IOException("jlink made no Java: " + said.toString().strip());
        }
    }
}
