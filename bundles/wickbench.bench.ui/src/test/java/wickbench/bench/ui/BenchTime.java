package wickbench.bench.ui;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import wickbench.bench.run.Clocks;
import wickbench.bench.run.Moment;

/** Clocks that stand until a test lets time pass; safe for several threads. */
final class BenchTime implements Clocks {
    private Duration since = Duration.ofHours(3);
    /** The wall when the machine started, such that it now agrees with the clock of the journal. */
    private final Instant started = InstantSource.system().instant().minus(since);

    private Duration moved = Duration.ZERO;

    @Override
    public synchronized Moment now() {
        return new Moment(started.plus(since).plus(moved), "test", since);
    }

    synchronized void pass(Duration span) {
        since = since.plus(span);
    }

    void seconds(long seconds) {
        pass(Duration.ofSeconds(seconds));
    }

    /** Sets the clock on the wall. */
    synchronized void moveWall(Duration by) {
        moved = moved.plus(by);
    }
}
