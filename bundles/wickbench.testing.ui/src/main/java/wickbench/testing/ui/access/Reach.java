package wickbench.testing.ui.access;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Slider;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;

/** What stands in a window, and who of it takes keys. */
final class Reach {
    private static final List<Class<? extends Control>> NATIVE = List.of(
            Text.class,
            Combo.class,
            Button.class,
            Table.class,
            Tree.class,
            org.eclipse.swt.widgets.List.class,
            Spinner.class,
            Scale.class,
            Slider.class,
            Link.class);

    private Reach() {}

    /** Returns all that can be seen, in the order in which it was made. */
    static List<Control> seen(Composite in) {
        List<Control> found = new ArrayList<>();
        for (Control child : in.getChildren()) {
            Point size = child.getSize();
            if (child.isVisible() && size.x > 0 && size.y > 0) {
                found.add(child);
                if (child instanceof Composite inner) {
                    found.addAll(seen(inner));
                }
            }
        }
        return found;
    }

    /** Returns what takes keys, whether it may at the moment or not. */
    static List<Control> controls(Composite in) {
        return seen(in).stream().filter(Reach::takesKeys).toList();
    }

    static boolean takesKeys(Control control) {
        return NATIVE.stream().anyMatch(type -> type.isInstance(control)) || painted(control) && keys(control);
    }

    /** Tells whether we paint it ourselves. */
    static boolean painted(Control control) {
        return control instanceof Canvas
                && control.isListening(SWT.Paint)
                && NATIVE.stream().noneMatch(type -> type.isInstance(control));
    }

    static boolean keys(Control control) {
        return control.isListening(SWT.KeyDown);
    }

    /** Tells whether a pointer can press it and no key can. */
    static boolean pointerOnly(Control control) {
        boolean pressed = control.isListening(SWT.MouseDown)
                || control.isListening(SWT.MouseUp)
                || control.isListening(SWT.MouseDoubleClick);
        return pressed && !takesKeys(control);
    }
}
