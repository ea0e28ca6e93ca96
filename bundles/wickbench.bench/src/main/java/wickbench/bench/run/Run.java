package wickbench.bench.run;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.reading.RecordedReading;

/** A run under way. Safe for several threads; nothing here waits. */
@ProviderType
public interface Run {

    /** Returns how it stands, as far as the disk knows. */
    RunState state();

    /** Looks at the clocks. */
    Moment now();

    /**
     * Keeps what has happened at a moment.
     *
     * <p>Events are taken one after the other. What became ready by one is recorded before the next is taken.
     *
     * @return the run after it, once it stands on the disk; fails with {@link wickbench.api.check.Refusal} when the strip is in no state for it
     */
    CompletableFuture<RunState> happened(RunEvent event, Moment at);

    /** Judges what was read so far, in order of number; the last word on a Negative is had when the run's control is read. */
    CompletableFuture<List<RecordedReading>> judged();

    /** Ends the run: the entry of the run goes into the journal, and nothing is kept beside it. */
    CompletableFuture<RunState> close();

    /** Tells of the run from now on, until the returned handle is closed. */
    Listening listen(RunListener listener);

    /** Ends the telling. */
    @FunctionalInterface
    interface Listening extends AutoCloseable {
        @Override
        void close();
    }
}
