package wickbench.training.ui;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.method.Format;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Form;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What else a round needs before it is opened: its name, method and times, who reads, and how its key is made. */
final class OpenForm {
    private static final int MOST_SECONDS = 7200;

    private final PageContext context;
    private final TrainingDoors doors;
    private final Field<Text> id;
    private final Field<Text> method;
    private final Field<Combo> format;
    private final Field<Text> develop;
    private final Field<Text> window;
    private final Field<Text> keyMaker;
    private final PeopleTicks readers;
    private final PeopleTicks experts;
    private final PanelField panel;

    /** What was typed. */
    record Draft(List<String> texts, int format, List<PersonId> readers, List<PersonId> experts, Optional<Path> panel) {
        static final Draft NONE = new Draft(List.of(), 0, List.of(), List.of(), Optional.empty());
    }

    OpenForm(
            Composite room,
            PageContext context,
            TrainingDoors doors,
            TrainingDoors.Known known,
            DesignPanel design,
            Runnable grown) {
        this.context = context;
        this.doors = doors;
        Theme theme = context.theme();
        theme.controls().label(room, Type.HEADING, TrainingUiWords.get("open.heading"));
        Form form = new Form(room, theme);
        id = form.text(TrainingUiWords.get("open.id"));
        method = form.text(TrainingUiWords.get("rounds.column.method"));
        format = form.choice(
                TrainingUiWords.get("open.format"),
                Arrays.stream(Format.values())
                        .map(each -> TrainingUiWords.get("format." + each.code()))
                        .toList());
        format.control().select(0);
        develop = form.text(TrainingUiWords.get("open.develop"));
        window = form.text(TrainingUiWords.get("open.window"));
        keyMaker = form.text(TrainingUiWords.get("round.key-by"));
        panel = new PanelField(form, room, context, doors, design, this::pictures, grown);
        List<String> methods =
                known.matrix().methods().stream().map(MethodId::value).toList();
        method.hint(
                methods.isEmpty()
                        ? TrainingUiWords.get("open.method.none")
                        : TrainingUiWords.get("open.method.some", String.join(", ", methods)));
        method.control().addListener(SWT.FocusOut, event -> ofMethod());
        readers = PeopleTicks.of(room, context, TrainingUiWords.get("open.readers"), known, true);
        experts = PeopleTicks.of(room, context, TrainingUiWords.get("open.experts"), known, false);
        methods.stream().findFirst().ifPresent(first -> {
            method.control().setText(first);
            ofMethod();
        });
    }

    /** Takes format and times from the method in force, where the bench is installed. */
    private void ofMethod() {
        Optional<MethodId> typed = method();
        typed.ifPresent(each -> context.jobs()
                .run(
                        TrainingUiWords.get("rounds.reading"),
                        progress -> doors.blind().method(each, doors.now()),
                        found -> found.filter(issued -> !id.control().isDisposed())
                                .ifPresent(this::take)));
    }

    private void take(Method issued) {
        format.control().select(issued.format().ordinal());
        if (!panel.pictured()) {
            develop.control().setText(String.valueOf(issued.timing().develop().toSeconds()));
            window.control().setText(String.valueOf(issued.timing().window().toSeconds()));
        }
    }

    /** A photograph does not develop: from its first second on it may be read, as long as the window says. */
    private void pictures() {
        develop.control().setText("1");
        develop.hint(TrainingUiWords.get("open.pictures"));
    }

    private Optional<MethodId> method() {
        try {
            Optional<MethodId> typed =
                    Optional.of(new MethodId(method.control().getText().strip()));
            return typed;
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Returns what was asked; empty when a field is wrong, which says what was expected. */
    Optional<PlanAsked> asked() {
        Optional<MethodId> of = method();
        if (of.isEmpty()) {
            method.complain(TrainingUiWords.get("open.method.expected"));
        }
        Optional<Duration> from = seconds(develop, 1);
        Optional<Duration> open = seconds(window, 0);
        if (of.isEmpty() || from.isEmpty() || open.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PlanAsked(
                id.control().getText().strip(),
                of.get(),
                Format.values()[format.control().getSelectionIndex()],
                from.get(),
                open.get(),
                readers.chosen(),
                experts.chosen(),
                panel.strips(),
                keyMaker.control().getText()));
    }

    private static Optional<Duration> seconds(Field<Text> field, int least) {
        String text = field.control().getText().strip();
        if (text.matches("[0-9]{1,4}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= MOST_SECONDS) {
            field.clear();
            return Optional.of(Duration.ofSeconds(Integer.parseInt(text)));
        }
        field.complain(TrainingUiWords.get("open.seconds", least, MOST_SECONDS));
        return Optional.empty();
    }

    private List<Field<Text>> texts() {
        return new ArrayList<>(List.of(id, method, develop, window, keyMaker));
    }

    Draft draft() {
        return new Draft(
                texts().stream().map(field -> field.control().getText()).toList(),
                format.control().getSelectionIndex(),
                readers.chosen(),
                experts.chosen(),
                panel.file());
    }

    void restore(Draft draft) {
        for (int i = 0; i < draft.texts().size(); i++) {
            texts().get(i).control().setText(draft.texts().get(i));
        }
        format.control().select(draft.format());
        readers.choose(draft.readers());
        experts.choose(draft.experts());
        draft.panel().ifPresent(panel::open);
    }

    PanelField panel() {
        return panel;
    }
}
