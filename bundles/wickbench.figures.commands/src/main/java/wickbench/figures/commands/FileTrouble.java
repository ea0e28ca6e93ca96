package wickbench.figures.commands;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Says in words why a file could not be read; Java's own messages only repeat its name. */
final class FileTrouble {
    private FileTrouble() {}

    static String of(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return FiguresWords.get("file.absent");
        }
        if (failure instanceof AccessDeniedException) {
            return FiguresWords.get("file.denied");
        }
        return String.valueOf(failure.getMessage());
    }
}
