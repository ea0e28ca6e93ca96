package wickbench.widgets;

import java.util.function.Supplier;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Gives controls the names that screen readers say. */
public final class Names {
    private Names() {}

    /** Makes screen readers say {@code name} for the control, as it is at that moment. */
    public static <C extends Control> C give(C control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
        return control;
    }
}
