package wickbench.people.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.authority.Permission;
import wickbench.shell.PageContext;
import wickbench.widgets.Field;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/** One thing that can be done about a person: what it is, what it asks for, its button, and what came of it. */
final class Section {
    private static final char HIDDEN = '\u2022';

    private final PageContext context;
    private final Composite card;
    private final Form form;
    private final Runnable grown;

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

    /**
     * Adds the button.
     *
     * @param collect reads the fields, on the UI thread, and gives the work to do elsewhere; empty when a field is wrong
     */
    <T> Button act(String key, Permission may, Supplier<Optional<Work<T>>> collect, Runnable done) {
        Label said = context.theme().controls().text(card, Type.SMALL, "");
        Button[] button = new Button[1];
        button[0] = context.theme()
                .controls()
                .button(card, PeopleUiWords.get(key), () -> collect.get().ifPresent(work -> {
                    button[0].setEnabled(false);
                    context.jobs()
                            .run(
                                    PeopleUiWords.get(key),
                                    work,
                                    result -> {
                                        context.say(PeopleUiWords.get(key + ".done"));
                                        done.run();
                                    },
                                    failure -> {
                                        button[0].setEnabled(true);
                                        say(said, failure.getMessage());
                                    });
                }));
        if (may instanceof Permission.Denied denied) {
            button[0].setEnabled(false);
            say(said, denied.text());
        }
        said.moveBelow(button[0]);
        button[0].setLayoutData(new org.eclipse.swt.layout.GridData(SWT.LEFT, SWT.CENTER, false, false));
        return button[0];
    }

    private void say(Label said, String text) {
        said.setText(text);
        grown.run();
    }
}
