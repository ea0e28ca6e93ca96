package wickbench.bench.ui;

import java.util.Optional;

/** Takes along what stands on the page before a run has begun, and puts it back when the page is made anew. */
final class DraftKeeping {
    private final StripEntry entry;
    private final NewStrips strips;
    private Optional<RunDraft> waiting = Optional.empty();

    DraftKeeping(StripEntry entry, NewStrips strips) {
        this.entry = entry;
        this.strips = strips;
    }

    /** Returns what stands on the form and in the list, if any of it would be missed. */
    Optional<RunDraft> draft() {
        return RunDraft.of(entry.form().texts(), entry.form().preChecks(), strips.all());
    }

    /** Puts back what stood there, now or as soon as it is known what can be chosen from. */
    void restore(RunDraft before) {
        waiting = Optional.of(before);
        if (entry.known()) {
            putBack();
        }
    }

    /** Puts back what waits. */
    void putBack() {
        waiting.ifPresent(before -> {
            waiting = Optional.empty();
            strips.put(before.strips());
            entry.put(before);
        });
    }
}
