package wickbench.journal.ui;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.shell.PageContext;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Type;

/** One thing of the page: what it is, its fields, its buttons, and what came of the last press. */
final class Panel {
    private final PageContext context;
    private final Composite card;
    private final Runnable grown;
    private final Composite outcome;
    private final Composite buttons;
    private final Composite content;

    /**
     * @param key under which title and line stand among the words
     * @param grown told when the panel has become higher
     */
    Panel(Composite parent, PageContext context, String key, Runnable grown) {
        this.context = context;
        this.grown = grown;
        Controls controls = context.theme().controls();
        card = Fit.wide(controls.card(parent, 1));
        controls.label(card, Type.HEADING, JournalUiWords.get(key + ".title"));
        Label line = controls.text(card, Type.BODY, JournalUiWords.get(key + ".line"));
        line.setForeground(context.theme().color(context.theme().palette().quiet()));
        content = Fit.wide(controls.box(card, 1));
        buttons = controls.row(card);
        outcome = Fit.wide(controls.box(card, 1));
        ((GridData) outcome.getLayoutData()).exclude = true;
    }

    /** Returns where fields and facts go. */
    Composite content() {
        return content;
    }

    Form form() {
        return new Form(content, context.theme());
    }

    Button button(String key, Runnable act) {
        return context.theme().controls().button(buttons, JournalUiWords.get(key), act);
    }

    Button mainButton(String key, Runnable act) {
        return context.theme().controls().mainButton(buttons, JournalUiWords.get(key), act);
    }

    /** Adds a button that lets a person choose a folder for a field. */
    void chooser(String key, Field<Text> field) {
        button(
                key,
                () -> context.files()
                        .folder(
                                JournalUiWords.get("folder.choose"),
                                field.control().getText())
                        .ifPresent(chosen -> {
                            field.control().setText(chosen.toString());
                            field.clear();
                        }));
    }

    /** Reads a folder; says below the field what is wrong with it. */
    static Optional<Path> path(Field<Text> field) {
        field.clear();
        String typed = field.control().getText().strip();
        try {
            if (!typed.isEmpty() && Path.of(typed).isAbsolute()) {
                return Optional.of(Path.of(typed));
            }
        } catch (InvalidPathException e) {
            // said below, as for a path that begins nowhere
        }
        field.complain(JournalUiWords.get("path.form"));
        return Optional.empty();
    }

    /** Says what came of a press, in place of what was said before. */
    void say(Meaning meaning, String word, String text) {
        clear();
        Fit.wide(new Badge(outcome, context.theme(), new Mark(word, shape(meaning), meaning)));
        context.theme().controls().text(outcome, Type.BODY, text);
        show(true);
    }

    /** Says what went wrong. */
    void fail(Exception failure) {
        say(Meaning.ALARM, JournalUiWords.get("failed"), String.valueOf(failure.getMessage()));
    }

    /** Takes back what was said. */
    void clear() {
        for (var old : outcome.getChildren()) {
            old.dispose();
        }
        show(false);
    }

    private void show(boolean visible) {
        ((GridData) outcome.getLayoutData()).exclude = !visible;
        outcome.setVisible(visible);
        card.layout(true, true);
        grown.run();
    }

    static Shape shape(Meaning meaning) {
        return switch (meaning) {
            case CALM -> Shape.RING;
            case ALARM, EXTREME -> Shape.TRIANGLE;
            case CAUTION -> Shape.DIAMOND;
            case NOTICE -> Shape.SQUARE;
            case NEUTRAL -> Shape.BAR;
        };
    }
}
