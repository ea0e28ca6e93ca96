package wickbench.widgets;

import java.util.function.Supplier;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;

/** Gives controls the names that screen readers say. */
public final class Names {
    private Names() {}

    /** Makes screen readers say {@code name} for the control, as it is at that moment; what we paint is a picture unless told otherwise. */
    public static <C extends Control> C give(C control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
        return control instanceof Canvas ? role(control, ACC.ROLE_GRAPHIC) : control;
    }

    /** Makes screen readers say by which keys, in words, one gets to a control that we paint. */
    public static void keys(Control control, String keys) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getKeyboardShortcut(AccessibleEvent event) {
                event.result = keys;
            }
        });
    }

    /** Makes screen readers say what a control that we paint is, an {@code ACC.ROLE_…}. */
    public static <C extends Control> C role(C control, int role) {
        control.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.detail = role;
                }
            }
        });
        return control;
    }
}
