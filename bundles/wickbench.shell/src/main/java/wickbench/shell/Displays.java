package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import wickbench.api.check.Refusal;

/** Opens the display, or says in one line why there is none. */
final class Displays {
    private Displays() {}

    static Display open() {
        Display.setAppName("Wickbench");
        if (System.getenv("DBUS_SESSION_BUS_ADDRESS") == null) {
            // without a session bus SWT would print that it cannot reach a session manager
            System.setProperty("org.eclipse.swt.internal.SessionManagerDBus.disable", "true");
        }
        try {
            Display display = new Display();
            NativeSheet.lay();
            return display;
        } catch (SWTError e) {
            if (e.code == SWT.ERROR_NO_HANDLES) {
                throw new Refusal("desktop.no-display", ShellWords.get("no-display"));
            }
            throw e;
        } catch (UnsatisfiedLinkError e) {
            throw new Refusal("desktop.no-toolkit", ShellWords.get("no-toolkit", firstLine(e)));
        }
    }

    private static String firstLine(UnsatisfiedLinkError e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }
}
