package wickbench.shell;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** All jobs under way, for the status line; safe for any thread. */
final class JobBoard {
    private final List<RunningJob<?>> jobs = new CopyOnWriteArrayList<>();

    void started(RunningJob<?> job) {
        jobs.add(job);
    }

    void ended(RunningJob<?> job) {
        jobs.remove(job);
    }

    /** Returns the one that has been under way longest. */
    Optional<RunningJob<?>> longest() {
        return jobs.stream().findFirst();
    }

    int size() {
        return jobs.size();
    }
}
