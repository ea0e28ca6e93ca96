package wickbench.widgets;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Where the keyboard works. */
public final class Focus {
    private Focus() {}

    /** Tells whether the focus is in a box or in anything below it. */
    public static boolean within(Composite box) {
        for (Control at = box.getDisplay().getFocusControl(); at != null; at = at.getParent()) {
            if (at == box) {
                return true;
            }
        }
        return false;
    }
}
