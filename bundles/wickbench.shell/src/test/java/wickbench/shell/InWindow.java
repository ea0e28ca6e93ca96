package wickbench.shell;

import java.util.stream.Stream;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What stands in a window, found by its kind. */
final class InWindow {
    private InWindow() {}

    static <C extends Control> Stream<C> all(Composite in, Class<C> type) {
        return Stream.of(in.getChildren())
                .flatMap(child -> Stream.concat(
                        Stream.of(child).filter(type::isInstance).map(type::cast),
                        child instanceof Composite inner ? all(inner, type) : Stream.empty()));
    }

    /** Tells whether the whole of a control lies in the room that its ancestors leave it. */
    static boolean whole(Control control) {
        Rectangle own = control.getDisplay().map(control.getParent(), null, control.getBounds());
        for (Composite at = control.getParent(); at != null; at = at.getParent()) {
            Rectangle room = control.getDisplay().map(at, null, at.getClientArea());
            if (!own.equals(own.intersection(room))) {
                return false;
            }
        }
        return true;
    }
}
