package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.Refusal;
import wickbench.api.person.PersonId;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Form;

/** Names the second reader, who is another than the first and has not seen their answers. */
final class SecondReader {
    private final PageContext context;
    private final BenchDoors doors;
    private final Runnable found;
    private final Composite row;
    private final Text field;
    private Optional<PersonId> first = Optional.empty();
    private Optional<PersonId> named = Optional.empty();
    private boolean asks;
    private String words = "";

    SecondReader(Composite parent, PageContext context, BenchDoors doors, Runnable found) {
        this.context = context;
        this.doors = doors;
        this.found = found;
        row = Fit.wide(context.theme().controls().box(parent, 1));
        field = new Form(row, context.theme())
                .text(FlowWords.get("second.label"))
                .control();
        field.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_RETURN && asks) {
                event.doit = false;
                ask(Optional.empty());
            }
        });
        visible(false);
    }

    /** Asks for a second reader, or not. */
    void show(boolean wanted, Optional<PersonId> firstReader) {
        asks = wanted;
        first = firstReader;
        named = Optional.empty();
        words = FlowWords.get("second.who");
        field.setText("");
        visible(wanted);
    }

    boolean asks() {
        return asks;
    }

    Optional<PersonId> named() {
        return named;
    }

    String words() {
        return words;
    }

    void focus() {
        field.setFocus();
    }

    private void visible(boolean is) {
        row.setVisible(is);
        ((GridData) row.getLayoutData()).exclude = !is;
        row.getParent().layout(true, true);
    }

    private void ask(Optional<Passphrase> pin) {
        String typed = field.getText().strip();
        if (!typed.isEmpty()) {
            context.jobs()
                    .run(
                            FlowWords.get("person.asking"),
                            progress -> doors.named(typed, pin),
                            this::take,
                            failure -> refused(typed, failure));
        }
    }

    private void take(PersonId person) {
        if (first.filter(person::equals).isPresent()) {
            words = FlowWords.get("second.same");
            field.selectAll();
            return;
        }
        named = Optional.of(person);
        asks = false;
        field.setText(person.value());
        found.run();
    }

    private void refused(String typed, Exception failure) {
        words = failure.getMessage();
        if (failure instanceof Refusal refusal && refusal.code().equals("sign-in.pin")) {
            new PinSheet(field.getShell(), context.theme(), typed).ask().ifPresent(pin -> ask(Optional.of(pin)));
        }
    }
}
