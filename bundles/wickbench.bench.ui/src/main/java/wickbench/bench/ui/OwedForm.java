package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;
import wickbench.widgets.Type;

/** A few fields under what is owed: Enter keeps what stands in them, Escape leaves it. */
final class OwedForm {
    private final PageContext context;
    private final Composite card;
    private final Runnable left;
    private final List<Text> fields = new ArrayList<>();

    /** Keeps what was typed, off the UI thread; a refusal is told in its own words. */
    @FunctionalInterface
    interface Keeping {
        String keep(List<String> typed);
    }

    /** @param left hears that the form was left, or what it asked for was kept */
    OwedForm(Composite parent, PageContext context, Runnable left) {
        this.context = context;
        this.left = left;
        card = Fit.wide(context.theme().controls().box(parent, 1));
        visible(false);
    }

    boolean isOpen() {
        return card.getVisible();
    }

    Shell shell() {
        return card.getShell();
    }

    List<Text> fields() {
        return List.copyOf(fields);
    }

    /**
     * Asks for something.
     *
     * @param labels of the fields, each with what stands there at first
     * @param check says in words what is wrong with the fields, or nothing
     * @param say hears what is still wrong, or what was kept
     */
    void ask(
            String title,
            LinkedHashMap<String, String> labels,
            Function<List<String>, String> check,
            Keeping keeping,
            Consumer<String> say) {
        for (Control old : card.getChildren()) {
            old.dispose();
        }
        fields.clear();
        context.theme().controls().text(card, Type.STRONG, title);
        Form form = new Form(card, context.theme());
        for (Map.Entry<String, String> label : labels.entrySet()) {
            Text field = form.text(label.getKey()).control();
            field.setText(label.getValue());
            field.addListener(SWT.Traverse, event -> {
                if (event.detail == SWT.TRAVERSE_RETURN) {
                    event.doit = false;
                    keep(title, check, keeping, say);
                } else if (event.detail == SWT.TRAVERSE_ESCAPE) {
                    event.doit = false;
                    leave();
                }
            });
            fields.add(field);
        }
        visible(true);
        fields.get(0).setFocus();
        say.accept(FlowWords.get("owed.form"));
    }

    private void keep(String title, Function<List<String>, String> check, Keeping keeping, Consumer<String> say) {
        List<String> typed =
                fields.stream().map(field -> field.getText().strip()).toList();
        String wrong = check.apply(typed);
        if (!wrong.isEmpty()) {
            say.accept(wrong);
            return;
        }
        context.jobs()
                .run(
                        title,
                        progress -> keeping.keep(typed),
                        kept -> {
                            leave();
                            say.accept(kept);
                        },
                        failure -> say.accept(failure.getMessage()));
    }

    void leave() {
        visible(false);
        left.run();
    }

    private void visible(boolean is) {
        card.setVisible(is);
        ((GridData) card.getLayoutData()).exclude = !is;
        card.getParent().getParent().layout(true, true);
    }
}
