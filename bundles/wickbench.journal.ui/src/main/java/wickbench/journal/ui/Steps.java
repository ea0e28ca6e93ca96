package wickbench.journal.ui;

import java.util.function.IntConsumer;
import wickbench.api.progress.Progress;

/** Tells how far work is in whole steps of a hundred, and whether it was stopped; for one piece of work. */
final class Steps {
    private final IntConsumer tell;
    private int told;
    private volatile boolean stopped;

    Steps(IntConsumer tell) {
        this.tell = tell;
    }

    Progress watching(Progress progress) {
        return (done, total) -> {
            int percent = total == 0 ? 0 : (int) (100 * done / total);
            if (percent != told) {
                told = percent;
                tell.accept(percent);
            }
            boolean on = progress.at(done, total);
            stopped = !on;
            return on;
        };
    }

    boolean stopped() {
        return stopped;
    }
}
