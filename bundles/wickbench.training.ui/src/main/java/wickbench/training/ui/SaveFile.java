package wickbench.training.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import wickbench.shell.PageContext;

/** Asks where a file shall be written, and writes it behind the screen. */
final class SaveFile {
    private SaveFile() {}

    static Optional<Path> ask(Shell window, String name, String... endings) {
        FileDialog dialog = new FileDialog(window, SWT.SAVE);
        dialog.setFilterExtensions(endings);
        dialog.setFileName(name);
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    /** Asks which file shall be read. */
    static Optional<Path> choose(Shell window, String... endings) {
        FileDialog dialog = new FileDialog(window, SWT.OPEN);
        dialog.setFilterExtensions(endings);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    static void write(PageContext context, Path file, Runnable work, Consumer<Exception> failed) {
        context.jobs()
                .run(
                        TrainingUiWords.get("file.writing"),
                        progress -> {
                            work.run();
                            return file;
                        },
                        written -> context.say(TrainingUiWords.get("file.written", written)),
                        failed);
    }
}
