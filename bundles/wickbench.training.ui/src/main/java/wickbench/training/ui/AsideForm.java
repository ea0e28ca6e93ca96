package wickbench.training.ui;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.shell.PageContext;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Type;
import wickbench.widgets.Work;

/** What is asked before something is done: a few fields, its button, and why it was refused. */
final class AsideForm {
    private final PageContext context;
    private final Composite room;
    private final Composite card;
    private final Form form;
    private final Runnable grown;
    private Button button;
    private SaidLine said;

    /**
     * Takes the place of what was asked before.
     *
     * @param room nothing else stands there
     */
    AsideForm(Composite room, PageContext context, String title, String line, Runnable grown) {
        this.context = context;
        this.room = room;
        this.grown = grown;
        clear();
        Controls controls = context.theme().controls();
        card = Fit.wide(controls.card(room, 1));
        controls.text(card, Type.STRONG, title);
        controls.text(card, Type.SMALL, line);
        form = new Form(card, context.theme());
    }

    Form form() {
        return form;
    }

    /** Returns where more than fields may stand. */
    Composite card() {
        return card;
    }

    /**
     * Adds the buttons.
     *
     * @param collect reads the fields, on the UI thread, and gives the work to do elsewhere; empty when a field is wrong
     */
    <T> void act(String verb, Supplier<Optional<Work<T>>> collect, Consumer<T> done) {
        button(verb, () -> collect.get().ifPresent(work -> run(verb, work, done)));
    }

    /** Adds the buttons of something that another window asks for, such as a signature. */
    void button(String verb, Runnable press) {
        Controls controls = context.theme().controls();
        Composite row = controls.row(card);
        button = controls.mainButton(row, verb, press);
        controls.button(row, TrainingUiWords.get("form.leave"), this::leave);
        said = new SaidLine(card, context.theme(), grown);
        grown.run();
    }

    private <T> void run(String verb, Work<T> work, Consumer<T> done) {
        button.setEnabled(false);
        said.say("");
        context.jobs().run(verb.replace("&", ""), work, done, failure -> {
            if (!button.isDisposed()) {
                button.setEnabled(true);
                said.refuse(failure);
            }
        });
    }

    private void leave() {
        clear();
        grown.run();
    }

    private void clear() {
        for (Control old : room.getChildren()) {
            old.dispose();
        }
    }
}
