package wickbench.bench.run;

import java.time.Duration;
import java.time.Instant;

/**
 * One look at two clocks.
 *
 * @param wall what the clock on the wall said; people may set it
 * @param steady which steady clock was read: it runs on from one start of the machine to the next, and nobody can set it
 * @param since what the steady clock said, to the millisecond
 */
public record Moment(Instant wall, String steady, Duration since) {

    /** How long it was from one moment to another, and by which clock one knows. */
    public record Elapsed(Duration span, boolean sure) {}

    /**
     * Returns how long after {@code earlier} this moment is.
     *
     * <p>Sure while the machine has not been started anew; after that only the clock on the wall can tell, and a span that it
     * makes negative stays so.
     */
    public Elapsed after(Moment earlier) {
        return steady.equals(earlier.steady)
                ? new Elapsed(since.minus(earlier.since), true)
                : new Elapsed(Duration.between(earlier.wall, wall), false);
    }

    /** Returns how far the clock on the wall has been moved since {@code earlier}; zero where nobody can tell. */
    public Duration wallMovedSince(Moment earlier) {
        return steady.equals(earlier.steady)
                ? Duration.between(earlier.wall, wall).minus(since.minus(earlier.since))
                : Duration.ZERO;
    }

    /** Returns the moment that lies this much later by both clocks. */
    public Moment plus(Duration span) {
        return new Moment(wall.plus(span), steady, since.plus(span));
    }
}
