package wickbench.shell;

import org.eclipse.swt.widgets.Display;

/**
 * Asks the system's own parts (menus, scroll bars, tips, dialogs) to be light or dark like the rest.
 *
 * <p>SWT has no public call for it. On GTK its own switch is called by name, so that nothing here hangs on it: on another
 * system, or should it go away, those parts keep the system's looks and the rest is unharmed.
 */
final class NativeLight {
    private NativeLight() {}

    /** Returns whether the system took notice. */
    static boolean prefer(boolean dark) {
        try {
            Class.forName("org.eclipse.swt.internal.gtk.OS", true, Display.class.getClassLoader())
                    .getMethod("setDarkThemePreferred", boolean.class)
                    .invoke(null, dark);
            return true;
        } catch (ReflectiveOperationException absent) {
            return false;
        }
    }
}
