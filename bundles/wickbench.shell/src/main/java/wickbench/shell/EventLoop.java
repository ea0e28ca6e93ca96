package wickbench.shell;

import java.util.function.BooleanSupplier;
import org.eclipse.swt.widgets.Display;

/** The loop of the UI thread. */
final class EventLoop {
    private EventLoop() {}

    /** Runs until {@code over}; sleeps while nothing happens. */
    static void until(Display display, BooleanSupplier over) {
        while (!over.getAsBoolean()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }
}
