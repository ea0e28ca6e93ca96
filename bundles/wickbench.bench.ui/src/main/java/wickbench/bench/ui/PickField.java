package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Theme;

/**
 * A field to type into that offers what the letters typed so far may mean.
 *
 * <p>Arrow down opens the list, Enter takes the chosen one, Escape closes it. What is not in the list may be typed all the same.
 */
final class PickField {
    private final Text text;
    private final PickList list;
    private List<Pick> picks = List.of();
    private boolean filling;

    PickField(Composite parent, Composite over, Theme theme) {
        text = theme.controls().field(parent);
        list = new PickList(text, over, theme, this::take);
        text.addListener(SWT.Modify, event -> typed());
        text.addListener(SWT.KeyDown, this::key);
        text.addListener(SWT.Traverse, this::traverse);
        text.addListener(SWT.MouseDown, event -> list.show(fitting()));
    }

    Text control() {
        return text;
    }

    /** Puts a value there as if it had been chosen; no list opens. */
    void put(String value) {
        filling = true;
        text.setText(value);
        filling = false;
    }

    void picks(List<Pick> some) {
        picks = List.copyOf(some);
    }

    List<Pick> offered() {
        return picks;
    }

    /** Returns what is chosen, or what was typed if it is in no list. */
    String value() {
        return chosen().map(Pick::value).orElse(text.getText());
    }

    Optional<Pick> chosen() {
        return picks.stream().filter(pick -> pick.is(text.getText())).findFirst();
    }

    private List<Pick> fitting() {
        boolean settled = text.getText().isBlank() || chosen().isPresent();
        return settled
                ? picks
                : picks.stream().filter(pick -> pick.fits(text.getText())).toList();
    }

    private void typed() {
        if (!filling && text.isFocusControl()) {
            // what was typed to its end is what Enter takes
            list.show(chosen().map(List::of).orElseGet(this::fitting));
        }
    }

    private void take(Pick pick) {
        put(pick.value());
        text.selectAll();
        list.close();
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_DOWN -> {
                if (!list.step(1)) {
                    list.show(fitting());
                }
                event.doit = false;
            }
            case SWT.ARROW_UP -> event.doit = !list.step(-1);
            default -> {
                // typed into the field
            }
        }
    }

    private void traverse(Event event) {
        boolean forward = event.detail == SWT.TRAVERSE_RETURN || event.detail == SWT.TRAVERSE_TAB_NEXT;
        if (event.detail == SWT.TRAVERSE_ESCAPE && list.open()) {
            list.close();
            event.doit = false;
        } else if (forward && list.open()) {
            list.current().ifPresent(this::take);
            // Enter has chosen, and records nothing yet; Tab chooses and goes on
            event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT;
            list.close();
        }
    }
}
