package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.chart.Chart;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.report.Report;
import wickbench.shell.PageContext;
import wickbench.training.Competence;
import wickbench.training.PersonRecord;
import wickbench.widgets.ChartView;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.TableKit;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One person: how they stand to a method, what may be done about it, and everything that happened, drawn and in words. */
final class PersonFile {
    private static final int TABLE = 280;
    private static final int CHART = 260;

    private final PageContext context;
    private final TrainingDoors doors;
    private final TrainingDoors.Known known;
    private final Runnable grown;
    private final Runnable changed;
    private final PersonId person;
    private Field<Combo> method;
    private Standing standing;

    /** What is known of a person, and their time line. */
    record Known(PersonRecord record, Chart line) {}

    PersonFile(
            PageContext context,
            TrainingDoors doors,
            TrainingDoors.Known known,
            PersonId person,
            Runnable grown,
            Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.person = person;
        this.grown = grown;
        this.changed = changed;
    }

    PersonId person() {
        return person;
    }

    /**
     * Fills the room.
     *
     * @param wanted the method to show; else the first where something is to be done
     */
    void fill(Composite room, Known of, Optional<MethodId> wanted) {
        Theme theme = context.theme();
        theme.controls().text(room, Type.HEADING, known.who(person).replace("&", "&&"));
        theme.controls().text(room, Type.SMALL, sight(of.record()));
        method = new Form(room, theme)
                .choice(
                        TrainingUiWords.get("file.method"),
                        methods().stream().map(MethodId::value).toList());
        standing = new Standing(room, context, doors, known, grown, changed);
        method.control()
                .addListener(
                        SWT.Selection,
                        event -> show(methods().get(method.control().getSelectionIndex())));
        show(wanted.filter(methods()::contains).orElseGet(() -> methods().get(first())));
        papers(room, of.record());
        theme.controls().label(room, Type.STRONG, TrainingUiWords.get("file.line"));
        if (!of.record().happenings().isEmpty()) {
            ChartView chart = new ChartView(room, context, doors.painter());
            high(chart, CHART);
            chart.chart(of.line());
        }
        high(new TableKit<>(room, context, HappeningTable.of(of.record(), known)).control(), TABLE);
    }

    private String sight(PersonRecord record) {
        return record.sight()
                .map(sight -> TrainingUiWords.get(
                        "file.sight",
                        TrainingUiWords.get("vision." + sight.vision().code()),
                        Times.minute(sight.at(), known.zone())))
                .orElseGet(() -> TrainingUiWords.get("file.sight.none"));
    }

    private List<MethodId> methods() {
        return known.matrix().methods();
    }

    /** The method where something is to be done, else the first. */
    private int first() {
        for (int i = 0; i < methods().size(); i++) {
            Optional<Competence> cell = known.matrix().cell(person, methods().get(i));
            if (cell.filter(each -> each.decided().isPresent() && !each.state().mayTest())
                    .isPresent()) {
                return i;
            }
        }
        return 0;
    }

    /** Shows how the person stands to a method. */
    void show(MethodId of) {
        method.control().select(methods().indexOf(of));
        standing.show(person, of);
    }

    private void papers(Composite room, PersonRecord record) {
        Theme theme = context.theme();
        Composite row = theme.controls().row(room);
        SaidLine said = new SaidLine(room, theme, grown);
        theme.controls()
                .button(
                        row,
                        TrainingUiWords.get("file.certificate"),
                        () -> print(said, "certificate", () -> doors.papers().certificate(record, doors.now())));
        theme.controls()
                .button(
                        row,
                        TrainingUiWords.get("file.print"),
                        () -> print(said, "person", () -> doors.papers().person(record)));
    }

    private void print(SaidLine said, String what, java.util.function.Supplier<Report> report) {
        context.files()
                .save(person.value() + "-" + what + ".pdf", "*.pdf", "*.xlsx", "*.csv")
                .ifPresent(file ->
                        SaveFile.write(context, file, () -> doors.papers().print(report.get(), file), said::refuse));
    }

    private void high(Control control, int height) {
        GridData data = new GridData(GridData.FILL_HORIZONTAL);
        data.heightHint = context.theme().px(height);
        control.setLayoutData(data);
    }
}
