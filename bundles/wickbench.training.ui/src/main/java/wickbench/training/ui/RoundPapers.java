package wickbench.training.ui;

import java.nio.file.Path;
import org.eclipse.swt.widgets.Shell;
import wickbench.shell.PageContext;
import wickbench.training.Round;

/** Writes the blank sheet of a round, and its report. */
record RoundPapers(PageContext context, TrainingDoors doors, SaidLine said) {

    void blank(Shell window, Round round) {
        SaveFile.ask(window, round.id() + "-sheet.csv", "*.csv")
                .ifPresent(file -> write(file, () -> doors.blind().sheets().blank(round, file)));
    }

    void report(Shell window, RoundList.Whole whole) {
        SaveFile.ask(window, whole.round().id() + ".pdf", "*.pdf", "*.xlsx", "*.csv")
                .ifPresent(file -> write(file, () -> doors.papers().print(whole.report(), file)));
    }

    private void write(Path file, Runnable work) {
        SaveFile.write(context, file, work, said::refuse);
    }
}
