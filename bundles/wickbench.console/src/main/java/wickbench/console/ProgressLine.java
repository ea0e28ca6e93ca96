package wickbench.console;

import java.io.PrintStream;
import wickbench.api.progress.Progress;

/** Shows progress as one line on standard error, a new one for each tenth part done. */
final class ProgressLine implements Progress {
    private static final int PARTS = 10;

    private final PrintStream err;
    private final String what;
    private long shown;

    ProgressLine(PrintStream err, String what) {
        this.err = err;
        this.what = what;
    }

    @Override
    public synchronized boolean at(long done, long total) {
        long part = total == 0 ? PARTS : done * PARTS / total;
        if (part > shown) {
            shown = part;
            err.println(what + ": " + done + " / " + total);
        }
        return true;
    }
}
