package wickbench.testing.ui.access;

import java.lang.reflect.Field;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/**
 * What a screen reader hears of a control, in the toolkit's order: what listeners say, else its own words, else the label that
 * stands right before it, which the toolkit ties to it.
 */
record Spoken(Control control) {

    /** Returns its name; empty when it has none. */
    String name() {
        AccessibleEvent event = new AccessibleEvent(control.getAccessible());
        event.childID = ACC.CHILDID_SELF;
        event.result = ownWords().orElseGet(() -> labelBefore().orElse(""));
        this.<AccessibleListener>heard("accessibleListeners").forEach(listener -> listener.getName(event));
        return event.result == null ? "" : event.result.strip();
    }

    /** Returns the keys that lead to it, as listeners say. */
    String keys() {
        AccessibleEvent event = new AccessibleEvent(control.getAccessible());
        event.childID = ACC.CHILDID_SELF;
        this.<AccessibleListener>heard("accessibleListeners").forEach(listener -> listener.getKeyboardShortcut(event));
        return event.result == null ? "" : event.result;
    }

    /** Returns the role that listeners say; empty when nobody says one. */
    Optional<Integer> role() {
        AccessibleControlEvent event = new AccessibleControlEvent(control.getAccessible());
        event.childID = ACC.CHILDID_SELF;
        event.detail = -1;
        this.<AccessibleControlListener>heard("accessibleControlListeners")
                .forEach(listener -> listener.getRole(event));
        return Optional.of(event.detail).filter(role -> role >= 0);
    }

    private Optional<String> ownWords() {
        String words = control instanceof Button button
                ? button.getText()
                : control instanceof Link link ? link.getText() : control instanceof Label label ? label.getText() : "";
        return Optional.of(words.replace("&", "")).filter(text -> !text.isBlank());
    }

    private Optional<String> labelBefore() {
        List<Control> row = List.of(control.getParent().getChildren());
        int at = row.indexOf(control);
        return at > 0 && row.get(at - 1) instanceof Label label
                ? Optional.of(label.getText().replace("&", "")).filter(text -> !text.isBlank())
                : Optional.empty();
    }

    /** The toolkit asks its listeners only when a reader is there, so they are asked here. */
    @SuppressWarnings("unchecked") // the toolkit's own lists
    private <T> List<T> heard(String field) {
        try {
            Field list = Accessible.class.getDeclaredField(field);
            list.setAccessible(true);
            Object listeners = list.get(control.getAccessible());
            return listeners == null ? List.of() : List.copyOf((List<T>) listeners);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the toolkit keeps its listeners elsewhere", e);
        }
    }
}
