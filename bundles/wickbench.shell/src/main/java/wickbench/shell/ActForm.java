package wickbench.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Permission;
import wickbench.widgets.Controls;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Job;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Note;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/** One thing that is done: what it is, its fields, its button, and why it was refused. Escape leaves it undone. */
public final class ActForm {
    private final PageContext context;
    private final Composite card;
    private final Form form;
    private final Runnable grown;
    private final Runnable leave;
    private Button button;
    private Label said;
    private Optional<Control> first = Optional.empty();
    private Optional<Job> running = Optional.empty();

    private final Words words;

    /** The words of a bundle, as it asks for them. */
    @FunctionalInterface
    public interface Words {
        String get(String key, Object... facts);
    }

    /** What an act is called, and a line that says what comes of it. */
    public record Titled(String title, String line) {}

    /**
     * Begins it.
     *
     * @param words in which labels and verbs stand under the keys that are given here
     * @param grown told when it has become higher
     * @param leave told when nothing shall be done after all
     */
    public ActForm(Composite parent, PageContext context, Words words, Titled what, Runnable grown, Runnable leave) {
        this.context = context;
        this.words = words;
        this.grown = grown;
        this.leave = leave;
        card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().text(card, Type.HEADING, what.title());
        Label line = context.theme().controls().text(card, Type.BODY, what.line());
        line.setForeground(context.theme().color(context.theme().palette().quiet()));
        form = new Form(card, context.theme());
    }

    public Composite card() {
        return card;
    }

    public Field<Text> text(String key) {
        return kept(form.text(words.get(key)));
    }

    public Field<Text> text(String key, String value) {
        Field<Text> field = text(key);
        field.control().setText(value);
        return field;
    }

    public Field<Combo> choice(String key, List<String> choices) {
        return kept(form.choice(words.get(key), choices));
    }

    /** Adds a field whose label stands in no file of words, such as the name of a part. */
    public Field<Text> named(String label) {
        return kept(form.text(label));
    }

    /** Adds any control with its label. */
    public <C extends Control> Field<C> field(String key, Function<Composite, C> make) {
        return kept(form.field(words.get(key), make));
    }

    private <C extends Control> Field<C> kept(Field<C> field) {
        first = first.or(() -> Optional.of(field.control()));
        escapes(field.control());
        if (field.control() instanceof Text text) {
            text.addListener(SWT.DefaultSelection, event -> press());
        }
        return field;
    }

    private void escapes(Control control) {
        control.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                context.update(leave);
            }
        });
    }

    /** Says something that is to be minded. */
    public void note(Meaning meaning, String text) {
        Fit.wide(new Note(card, context.theme(), meaning, text));
    }

    /**
     * Adds the button.
     *
     * @param key its verb
     * @param collect reads the fields, on the UI thread, and gives the work to do elsewhere; empty when a field is wrong
     * @param done takes what came of it
     */
    public <T> void act(String key, Permission may, Supplier<Optional<Work<T>>> collect, Consumer<T> done) {
        act(key, may, collect, done, failure -> false);
    }

    /** Adds the button of something whose failure may be a question. */
    public <T> void act(
            String key,
            Permission may,
            Supplier<Optional<Work<T>>> collect,
            Consumer<T> done,
            Predicate<Exception> answered) {
        button(key, may, () -> collect.get().ifPresent(work -> run(key, work, done, answered)));
    }

    /** Adds the button of something that another window asks for, such as a signature. */
    public void button(String key, Permission may, Runnable press) {
        Controls controls = context.theme().controls();
        Composite row = controls.row(card);
        button = controls.mainButton(row, words.get(key), press);
        Button undone = controls.button(row, ShellWords.get("form.leave"), () -> {
            running.ifPresent(Job::cancel);
            leave.run();
        });
        Names.keys(undone, ShellWords.get("form.leave.key"));
        undone.setToolTipText(ShellWords.get("form.leave.key"));
        escapes(button);
        escapes(undone);
        said = controls.text(card, Type.BODY, "");
        say("");
        if (may instanceof Permission.Denied denied) {
            button.setEnabled(false);
            refuse(denied.text());
        }
    }

    private void press() {
        if (button != null && button.isEnabled()) {
            button.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
        }
    }

    private <T> void run(String key, Work<T> work, Consumer<T> done, Predicate<Exception> answered) {
        button.setEnabled(false);
        say("");
        running = Optional.of(context.jobs().run(words.get(key).replace("&", ""), work, done, failure -> {
            if (!button.isDisposed() && !answered.test(failure)) {
                button.setEnabled(true);
                refuse(String.valueOf(failure.getMessage()));
            }
        }));
    }

    /** Says why it is not done. */
    public void refuse(String text) {
        said.setForeground(
                context.theme().color(context.theme().tone(Meaning.ALARM).ink()));
        say(text);
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        ((GridData) said.getLayoutData()).exclude = text.isEmpty();
        grown.run();
    }

    public void focus() {
        first.ifPresentOrElse(Control::setFocus, button::setFocus);
    }
}
