package wickbench.shell;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Monitor;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.json.Json;
import wickbench.widgets.Memory;

/** Where the window stands, remembered on each change and always brought back onto a screen that is there. */
final class WindowBounds {
    private static final String KEY = "window";
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 860;
    private static final int SETTLE_MILLIS = 300;

    private final Shell shell;
    private final Memory memory;
    private final Runnable keep = this::keep;

    private WindowBounds(Shell shell, Memory memory) {
        this.shell = shell;
        this.memory = memory;
    }

    /** Puts the window where it was and follows it from then on. */
    static void follow(Shell shell, Memory memory) {
        WindowBounds bounds = new WindowBounds(shell, memory);
        bounds.restore();
        shell.addListener(SWT.Resize, event -> bounds.changed());
        shell.addListener(SWT.Move, event -> bounds.changed());
    }

    /** Returns the nearest place for {@code wanted} on one of the screens. */
    static Rectangle onScreen(Rectangle wanted, Rectangle screen) {
        int width = Math.min(wanted.width, screen.width);
        int height = Math.min(wanted.height, screen.height);
        int x = Math.max(screen.x, Math.min(wanted.x, screen.x + screen.width - width));
        int y = Math.max(screen.y, Math.min(wanted.y, screen.y + screen.height - height));
        return new Rectangle(x, y, width, height);
    }

    private void restore() {
        Rectangle first = shell.getDisplay().getPrimaryMonitor().getClientArea();
        Rectangle middle = new Rectangle(
                first.x + Math.max(0, (first.width - WIDTH) / 2),
                first.y + Math.max(0, (first.height - HEIGHT) / 2),
                WIDTH,
                HEIGHT);
        Optional<Json.Obj> kept = memory.recall(KEY);
        Rectangle wanted = kept.flatMap(WindowBounds::rectangle).orElse(middle);
        shell.setBounds(onScreen(wanted, screenOf(wanted).orElse(first)));
        shell.setMaximized(kept.flatMap(all -> all.get("maximized"))
                .filter(new Json.Bool(true)::equals)
                .isPresent());
    }

    private Optional<Rectangle> screenOf(Rectangle wanted) {
        return Arrays.stream(shell.getDisplay().getMonitors())
                .map(Monitor::getClientArea)
                .filter(wanted::intersects)
                .findFirst();
    }

    private void changed() {
        shell.getDisplay().timerExec(SETTLE_MILLIS, keep);
    }

    private void keep() {
        if (shell.isDisposed()) {
            return;
        }
        Json.Obj kept = memory.recall(KEY).orElse(Json.object());
        Rectangle now = shell.getBounds();
        // the size before it was maximized is what one wants back afterwards
        Json.Obj sized = shell.getMaximized()
                ? kept
                : kept.with("x", now.x)
                        .with("y", now.y)
                        .with("width", now.width)
                        .with("height", now.height);
        memory.keep(KEY, sized.with("maximized", shell.getMaximized()));
    }

    private static Optional<Rectangle> rectangle(Json.Obj kept) {
        int[] all = new int[4];
        String[] names = {"x", "y", "width", "height"};
        for (int i = 0; i < names.length; i++) {
            if (!(kept.get(names[i]).orElse(Json.Null.NULL) instanceof Json.Num number)) {
                return Optional.empty();
            }
            all[i] = number.value().intValue();
        }
        return all[2] > 0 && all[3] > 0 ? Optional.of(new Rectangle(all[0], all[1], all[2], all[3])) : Optional.empty();
    }

    /** Returns bounds in the middle of a window, but whole on its screen. */
    static Rectangle middle(Shell window, Point size) {
        Rectangle below = window.getBounds();
        Rectangle wanted = new Rectangle(
                below.x + (below.width - size.x) / 2, below.y + (below.height - size.y) / 2, size.x, size.y);
        return onScreen(wanted, window.getMonitor().getClientArea());
    }
}
