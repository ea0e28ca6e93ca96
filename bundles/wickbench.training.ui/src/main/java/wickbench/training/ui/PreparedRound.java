package wickbench.training.ui;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.shell.PageContext;
import wickbench.training.Rounds.Prepared;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A round that was just opened: its key can be saved now, for who prepares the strips, and is shown to nobody. */
record PreparedRound(PageContext context, TrainingDoors doors, Runnable done) {

    void fill(Composite room, Prepared prepared) {
        Theme theme = context.theme();
        String id = prepared.round().id();
        theme.controls().text(room, Type.HEADING, TrainingUiWords.get("prepared.title", id));
        Fit.wide(new Note(room, theme, Meaning.CAUTION, TrainingUiWords.get("prepared.key")));
        new Facts(room, theme)
                .add(
                        TrainingUiWords.get("round.commitment"),
                        prepared.round().commitment().hex())
                .add(
                        TrainingUiWords.get("prepared.codes"),
                        String.join(" ", prepared.round().codes()));
        Composite row = theme.controls().row(room);
        SaidLine said = new SaidLine(room, theme, () -> {});
        Button labels = theme.controls()
                .mainButton(
                        row,
                        TrainingUiWords.get("prepared.labels"),
                        () -> context.files()
                                .save(id + "-labels.csv", "*.csv")
                                .ifPresent(file -> SaveFile.write(
                                        context,
                                        file,
                                        () -> doors.blind().sheets().labels(prepared.key(), file),
                                        said::refuse)));
        theme.controls()
                .button(
                        row,
                        TrainingUiWords.get("round.blank"),
                        () -> new RoundPapers(context, doors, said).blank(prepared.round()));
        theme.controls().button(row, TrainingUiWords.get("prepared.done"), done);
        labels.setFocus();
    }
}
