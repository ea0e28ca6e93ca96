package wickbench.shell;

import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** Lets the page in front hear of news, once for all that comes within half a second. */
final class Follow implements Runnable {
    private static final int GATHER_MS = 500;
    private final Shell shell;
    private final Runnable tell;
    private final AtomicBoolean waiting = new AtomicBoolean();

    private Follow(Shell shell, Runnable tell) {
        this.shell = shell;
        this.tell = tell;
    }

    /** Follows news for as long as the window lives. */
    static void news(Shell shell, News news, Runnable tell) {
        Follow follow = new Follow(shell, tell);
        news.onNews(follow);
        shell.addListener(SWT.Dispose, event -> news.forget(follow));
    }

    @Override
    public void run() {
        if (waiting.compareAndSet(false, true)) {
            try {
                Display display = shell.getDisplay();
                display.asyncExec(() -> display.timerExec(GATHER_MS, this::tellSoon));
            } catch (SWTException gone) {
                // the window closed meanwhile: nobody is left to be told
                if (gone.code != SWT.ERROR_WIDGET_DISPOSED && gone.code != SWT.ERROR_DEVICE_DISPOSED) {
                    throw gone;
                }
            }
        }
    }

    private void tellSoon() {
        waiting.set(false);
        if (!shell.isDisposed()) {
            tell.run();
        }
    }
}
