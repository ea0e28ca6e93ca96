package wickbench.training.ui;

import java.nio.file.Path;
import wickbench.shell.PageContext;
import wickbench.training.Round;

/** Writes the blank sheet of a round, and its report. */
record RoundPapers(PageContext context, TrainingDoors doors, SaidLine said) {

    void blank(Round round) {
        context.files()
                .save(round.id() + "-sheet.csv", "*.csv")
                .ifPresent(file -> write(file, () -> doors.blind().sheets().blank(round, file)));
    }

    void report(RoundList.Whole whole) {
        context.files()
                .save(whole.round().id() + ".pdf", "*.pdf", "*.xlsx", "*.csv")
                .ifPresent(file -> write(file, () -> doors.papers().print(whole.report(), file)));
    }

    private void write(Path file, Runnable work) {
        SaveFile.write(context, file, work, said::refuse);
    }
}
