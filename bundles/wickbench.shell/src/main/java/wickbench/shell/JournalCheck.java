package wickbench.shell;

import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/**
 * Verifies the whole journal once, after the window is open.
 *
 * <p>Opening reads only what lies beyond the newest checkpoint, so that a start takes as long after ten years as on the first day; what
 * was changed before that is found here. Nothing is said while all holds.
 */
final class JournalCheck {
    /** Until the first page has read what it shows, and whoever opened the window has begun. */
    private static final int AFTER_MILLIS = 3_000;
    /** Not every system minds how urgent a thread is, so this one also rests while others work. */
    private static final long REST_NANOS = 25_000_000;

    private final Window window;
    private final JobBoard board;
    private final PageJobs jobs;

    private JournalCheck(Window window, Supplies supplies) {
        this.window = window;
        board = window.board();
        Shell shell = window.shell();
        jobs = new PageJobs(
                shell.getDisplay(),
                supplies.workers().unhurried(),
                () -> !shell.isDisposed(),
                board,
                e -> window.say(Failures.plain(e)));
        shell.addListener(SWT.Dispose, event -> jobs.cancelAll());
    }

    /** Begins a while after the window is usable; does nothing where no journal is installed. */
    static void soon(Window window, Supplies supplies) {
        supplies.neighbours()
                .journal()
                .ifPresent(journal ->
                        window.shell().getDisplay().timerExec(AFTER_MILLIS, () -> now(window, supplies, journal)));
    }

    static void now(Window window, Supplies supplies, Journal journal) {
        if (!window.shell().isDisposed()) {
            new JournalCheck(window, supplies).begin(journal);
        }
    }

    private void begin(Journal journal) {
        jobs.runUnasked(
                ShellWords.get("check.work"),
                progress -> verified(journal, progress),
                shown -> shown.ifPresent(this::tell));
    }

    /** Leaves out a simulated home: it vouches for nothing. */
    private Optional<Verification> verified(Journal journal, Progress progress) {
        return journal.founding()
                .filter(founded -> !founded.simulated())
                .map((Founding real) -> journal.verify((done, total) -> {
                    if (board.awaited()) {
                        LockSupport.parkNanos(REST_NANOS);
                    }
                    return progress.at(done, total);
                }));
    }

    private void tell(Verification shown) {
        if (shown.findings().isEmpty()) {
            return;
        }
        Verification.Broken first = shown.findings().get(0);
        String all = shown.findings().stream()
                .map(broken -> broken.where() + ": " + broken.text())
                .collect(Collectors.joining("\n"));
        window.alarm(
                ShellWords.get(
                        "check.broken",
                        first.where(),
                        first.text(),
                        shown.findings().size()),
                all);
    }
}
