package wickbench.training.ui;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.training.Competence;
import wickbench.training.Happening;
import wickbench.training.PersonRecord;
import wickbench.widgets.Badge;
import wickbench.widgets.Column;
import wickbench.widgets.Facts;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.RowSource;
import wickbench.widgets.Sort;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One person: how they stand to a method, what may be done about it, and everything that happened. */
final class PersonFile {
    private static final int TABLE = 280;
    private static final Set<String> KINDS = Set.of(
            "training.authorised",
            "training.suspended",
            "training.restored",
            "training.acknowledged",
            "training.sight-tested",
            "training.observed",
            "training.answered",
            "training.seen",
            "round.called",
            "drill.done",
            "clash.settled");

    private final PageContext context;
    private final TrainingDoors doors;
    private final TrainingDoors.Known known;
    private final Runnable grown;
    private final Runnable changed;
    private final Theme theme;
    private Composite standing;

    PersonFile(PageContext context, TrainingDoors doors, TrainingDoors.Known known, Runnable grown, Runnable changed) {
        this.context = context;
        this.doors = doors;
        this.known = known;
        this.grown = grown;
        this.changed = changed;
        theme = context.theme();
    }

    void fill(Composite room, PersonRecord record) {
        PersonId person = record.person();
        theme.controls().text(room, Type.HEADING, known.who(person).replace("&", "&&"));
        theme.controls()
                .text(
                        room,
                        Type.SMALL,
                        record.sight()
                                .map(sight -> TrainingUiWords.get(
                                        "file.sight",
                                        TrainingUiWords.get(
                                                "vision." + sight.vision().code()),
                                        Times.minute(sight.at(), known.zone())))
                                .orElseGet(() -> TrainingUiWords.get("file.sight.none")));
        Form form = new Form(room, theme);
        List<MethodId> methods = known.matrix().methods();
        Field<Combo> method = form.choice(
                TrainingUiWords.get("file.method"),
                methods.stream().map(MethodId::value).toList());
        standing = theme.controls().box(room, 1);
        standing.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        int first = first(person, methods);
        method.control().select(first);
        method.control()
                .addListener(
                        SWT.Selection,
                        event -> stand(person, methods.get(method.control().getSelectionIndex())));
        stand(person, methods.get(first));
        theme.controls().label(room, Type.STRONG, TrainingUiWords.get("file.line"));
        Control table = new TableKit<>(room, context, line(record)).control();
        GridData data = new GridData(GridData.FILL_HORIZONTAL);
        data.heightHint = theme.px(TABLE);
        table.setLayoutData(data);
    }

    /** The method where something is to be done, else the first. */
    private int first(PersonId person, List<MethodId> methods) {
        for (int i = 0; i < methods.size(); i++) {
            Optional<Competence> cell = known.matrix().cell(person, methods.get(i));
            if (cell.filter(each -> each.decided().isPresent() && !each.state().mayTest())
                    .isPresent()) {
                return i;
            }
        }
        return 0;
    }

    private void stand(PersonId person, MethodId method) {
        for (Control old : standing.getChildren()) {
            old.dispose();
        }
        Optional<Competence> cell = known.matrix().cell(person, method);
        new Badge(standing, theme, States.of(known.matrix(), cell));
        cell.ifPresent(this::facts);
        cell.ifPresent(
                each -> new CompetenceActs(context, doors, known, standing.getShell(), changed).fill(standing, each));
        standing.requestLayout();
        grown.run();
    }

    private void facts(Competence cell) {
        Facts facts = new Facts(standing, theme);
        cell.until().ifPresent(day -> facts.add(TrainingUiWords.get("file.until"), day.toString()));
        cell.untestedUntil().ifPresent(day -> facts.add(TrainingUiWords.get("file.untested"), day.toString()));
        cell.tested().ifPresent(day -> facts.add(TrainingUiWords.get("file.tested"), day.toString()));
        cell.lapse()
                .ifPresent(lapse -> facts.add(
                        TrainingUiWords.get("file.lapse"),
                        TrainingUiWords.get("lapse." + lapse.cause().code(), lapse.day())));
        cell.version()
                .ifPresent(version -> facts.add(
                        TrainingUiWords.get("file.version"), TrainingUiWords.get("of", cell.read(), version)));
        cell.why().ifPresent(why -> facts.add(TrainingUiWords.get("file.why"), why));
    }

    private TableSpec<Happening> line(PersonRecord record) {
        List<Column<Happening>> columns = List.of(
                column("at", 130, each -> Times.minute(each.at(), known.zone())),
                column("what", 150, each -> kind(each.entry().kind())),
                column("words", 200, each -> words(each.facts())),
                column("method", 150, each -> each.facts().getOrDefault("method", "")),
                column("by", 90, each -> known.name(each.entry().by())),
                column("signed", 90, each -> TrainingUiWords.get(each.signed() ? "signed.yes" : "signed.no")));
        return new TableSpec<>(
                "training.file",
                TrainingUiWords.get("file.line"),
                columns,
                RowSource.of(record.happenings(), columns),
                Optional.of(new Sort("at", false)),
                TrainingUiWords.get("file.none"));
    }

    private static Column<Happening> column(String id, int width, java.util.function.Function<Happening, String> text) {
        return Column.of(id, TrainingUiWords.get("file.column." + id), width, text);
    }

    /** Entries of kinds to come are named as they are. */
    private static String kind(String kind) {
        return KINDS.contains(kind) ? TrainingUiWords.get("kind." + kind) : kind;
    }

    /** What a person wrote, or what was found. */
    private static String words(Map<String, String> facts) {
        Optional<String> threshold = Optional.ofNullable(facts.get("threshold"))
                .map(number -> TrainingUiWords.get("file.threshold", Percent.of(Double.parseDouble(number))));
        return threshold
                .or(() -> Stream.of("reason", "how", "remark", "set", "round")
                        .filter(facts::containsKey)
                        .map(facts::get)
                        .findFirst())
                .orElse("");
    }
}
