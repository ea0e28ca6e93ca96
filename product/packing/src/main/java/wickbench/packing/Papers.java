package wickbench.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Copies folders, and of the documentation only the pictures that one of its own pages shows. */
final class Papers {

    private static final Pattern SHOWN = Pattern.compile("!\\[[^]]*]\\((pictures/[^)]+)\\)");
    private static final String PICTURES = "pictures";

    private Papers() {}

    static void copyFolder(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            copy(file, to.resolve(from.relativize(file).toString()));
        }
    }

    static void copyDocs(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            String name = from.relativize(file).toString();
            if (!name.startsWith(PICTURES)) {
                copy(file, to.resolve(name));
                if (name.endsWith(".md") && !name.contains("/")) {
                    copyShown(file, to);
                }
            }
        }
    }

    private static void copyShown(Path page, Path to) throws IOException {
        var shown = SHOWN.matcher(Files.readString(page));
        while (shown.find()) {
            Path picture = to.resolve(shown.group(1));
            if (!Files.exists(picture)) {
                copy(page.resolveSibling(shown.group(1)), picture);
            }
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
    }

    /** All files below a folder, by name. */
    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}
