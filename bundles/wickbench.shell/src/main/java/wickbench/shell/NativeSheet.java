package wickbench.shell;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.eclipse.swt.widgets.Display;

/**
 * Gives the system's controls what {@code gtk.css} says: no shadow at words on buttons, and a box to tick that can be seen.
 *
 * <p>SWT has no public call for either. On GTK its own are called by name, as in {@link NativeLight}: where they are not, the
 * controls look as the system makes them, and the rest is unharmed.
 */
final class NativeSheet {
    private static final String INTERNAL = "org.eclipse.swt.internal.";
    /** What an application may lay over the theme of the system, below what SWT says of a single control; GTK gives applications 600. */
    private static final int PRIORITY = 599;

    private NativeSheet() {}

    /** Returns whether the system took notice; there is a display by now. */
    static boolean lay() {
        try {
            byte[] sheet = read();
            long provider =
                    (long) of("gtk.GTK").getMethod("gtk_css_provider_new").invoke(null);
            boolean read = (boolean) of("gtk3.GTK3")
                    .getMethod("gtk_css_provider_load_from_data", long.class, byte[].class, long.class, long[].class)
                    .invoke(null, provider, sheet, (long) sheet.length, new long[1]);
            long screen =
                    (long) of("gtk.GDK").getMethod("gdk_screen_get_default").invoke(null);
            of("gtk3.GTK3")
                    .getMethod("gtk_style_context_add_provider_for_screen", long.class, long.class, int.class)
                    .invoke(null, screen, provider, PRIORITY);
            return read;
        } catch (ReflectiveOperationException | UnsatisfiedLinkError absent) {
            return false;
        }
    }

    private static Class<?> of(String name) throws ClassNotFoundException {
        return Class.forName(INTERNAL + name, true, Display.class.getClassLoader());
    }

    private static byte[] read() {
        try (InputStream sheet = NativeSheet.class.getResourceAsStream("gtk.css")) {
            return sheet.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
