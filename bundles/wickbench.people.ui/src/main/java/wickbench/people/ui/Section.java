package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Meaning;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/** One thing that can be done about a person: what it is, what it asks for, its button, and what came of it. */
final class Section {
    private static final char HIDDEN = '\u2022';
    private static final int ALONE = 620;

    private final PageContext context;
    private final Composite card;
    private final Form form;
    private final Runnable grown;
    private boolean main;
    private Button button;
    private Label said;

    /**
     * @param key under which title, line and button stand among the words
     * @param grown told when the section has become higher
     */
    Section(Composite parent, PageContext context, String key, Runnable grown) {
        this.context = context;
        this.grown = grown;
        card = Fit.wide(context.theme().controls().card(parent, 1));
        context.theme().controls().label(card, Type.HEADING, PeopleUiWords.get(key + ".title"));
        Label line = context.theme().controls().text(card, Type.BODY, PeopleUiWords.get(key + ".line"));
        line.setForeground(context.theme().color(context.theme().palette().quiet()));
        form = new Form(card, context.theme());
    }

    Composite card() {
        return card;
    }

    Field<Text> text(String key) {
        return form.text(PeopleUiWords.get(key));
    }

    /** Adds a field that shows nothing of what is typed. */
    Field<Text> secret(String key) {
        Field<Text> field = text(key);
        field.control().setEchoChar(HIDDEN);
        return field;
    }

    Field<Combo> choice(String key, List<String> choices) {
        return form.choice(PeopleUiWords.get(key), choices);
    }

    /** Takes what was typed and empties the field. */
    static Passphrase take(Field<Text> field) {
        Passphrase taken = Passphrase.of(field.control().getTextChars());
        field.control().setText("");
        return taken;
    }

    /** Keeps the section as narrow as its fields read well, where it stands alone on a page. */
    Section narrow() {
        GridData data = new GridData(SWT.LEFT, SWT.TOP, false, false);
        data.widthHint = context.theme().px(ALONE);
        card.setLayoutData(data);
        return this;
    }

    /** Makes the button carry the page on. */
    Section main() {
        main = true;
        return this;
    }

    /**
     * Adds the button.
     *
     * @param collect reads the fields, on the UI thread, and gives the work to do elsewhere; empty when a field is wrong
     */
    <T> void act(String key, Permission may, Supplier<Optional<Work<T>>> collect, Runnable done) {
        Controls controls = context.theme().controls();
        Runnable press = () -> collect.get().ifPresent(work -> run(key, work, done));
        String verb = PeopleUiWords.get(key);
        button = main ? controls.mainButton(card, verb, press) : controls.button(card, verb, press);
        button.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
        said = controls.text(card, Type.SMALL, "");
        say("");
        if (may instanceof Permission.Denied denied) {
            button.setEnabled(false);
            say(denied.text());
        }
    }

    private <T> void run(String key, Work<T> work, Runnable done) {
        button.setEnabled(false);
        say("");
        context.jobs()
                .run(
                        PeopleUiWords.get(key),
                        work,
                        result -> {
                            context.say(PeopleUiWords.get(key + ".done"));
                            done.run();
                        },
                        failure -> {
                            button.setEnabled(true);
                            said.setForeground(context.theme()
                                    .color(context.theme().tone(Meaning.ALARM).ink()));
                            say(failure.getMessage());
                        });
    }

    private void say(String text) {
        said.setText(text);
        said.setVisible(!text.isEmpty());
        ((GridData) said.getLayoutData()).exclude = text.isEmpty();
        grown.run();
    }
}
