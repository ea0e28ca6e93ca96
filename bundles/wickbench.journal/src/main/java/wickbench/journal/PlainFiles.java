package wickbench.journal;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

/** The plain files below a folder in which others are at work; one that goes away meanwhile is not among them. */
class PlainFiles extends SimpleFileVisitor<Path> {
    private final List<Path> found = new ArrayList<>();

    /** Returns them in the order of their paths; none where there is no such folder. */
    static List<Path> below(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        // the folder itself may be a link, as to another disk; within it none is followed
        Path real = folder.toRealPath();
        PlainFiles files = new PlainFiles();
        Files.walkFileTree(real, files);
        return files.found().stream()
                .map(file -> folder.resolve(real.relativize(file)))
                .sorted()
                .toList();
    }

    List<Path> found() {
        return found;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        if (attributes.isRegularFile()) {
            found.add(file);
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException why) throws IOException {
        if (why instanceof NoSuchFileException) {
            return FileVisitResult.CONTINUE;
        }
        throw why;
    }
}
