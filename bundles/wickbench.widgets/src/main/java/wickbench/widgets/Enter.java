package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Hears Enter wherever the focus is in a part of the page, unless the control had a use for it. */
public final class Enter {
    private Enter() {}

    public static void heard(Control control, Runnable act) {
        control.addListener(SWT.Traverse, event -> {
            boolean button = control instanceof Button && (control.getStyle() & SWT.PUSH) != 0;
            if (event.detail == SWT.TRAVERSE_RETURN && event.doit && !button) {
                event.doit = false;
                act.run();
            }
        });
        if (control instanceof Composite parent) {
            for (Control child : parent.getChildren()) {
                heard(child, act);
            }
        }
    }
}
