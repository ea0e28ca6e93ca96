package wickbench.journal.ui;

import java.nio.file.Path;

/** A folder as people write it: below their own it begins with {@code ~}, but on Windows, where nobody does. */
final class ShownPath {
    private ShownPath() {}

    static String of(Path folder) {
        return of(folder, Path.of(System.getProperty("user.home")));
    }

    /** @param own the folder of who runs the program */
    static String of(Path folder, Path own) {
        boolean below = folder.startsWith(own)
                && own.getNameCount() > 0
                && folder.getFileSystem().getSeparator().equals("/");
        return below ? Path.of("~").resolve(own.relativize(folder)).toString() : folder.toString();
    }
}
