package wickbench.shell;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/** All jobs under way, for the status line; safe for any thread. */
final class JobBoard {
    private final List<RunningJob<?>> asked = new CopyOnWriteArrayList<>();
    private final List<RunningJob<?>> unasked = new CopyOnWriteArrayList<>();

    void started(RunningJob<?> job) {
        asked.add(job);
    }

    /** Takes up work that nobody waits for: it is shown only while nothing else is under way. */
    void startedUnasked(RunningJob<?> job) {
        unasked.add(job);
    }

    void ended(RunningJob<?> job) {
        asked.remove(job);
        unasked.remove(job);
    }

    /** Tells whether a page or a person waits for something. */
    boolean awaited() {
        return !asked.isEmpty();
    }

    /** Returns the one that has been under way longest of those somebody waits for, or else of the others. */
    Optional<RunningJob<?>> longest() {
        return Stream.concat(asked.stream(), unasked.stream()).findFirst();
    }

    int size() {
        return asked.size() + unasked.size();
    }
}
