package wickbench.training.ui;

import java.nio.file.Path;
import java.util.function.Consumer;
import wickbench.shell.PageContext;

/** Writes a file behind the screen. */
final class SaveFile {
    private SaveFile() {}

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
