package wickbench.bench.ui;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import wickbench.bench.run.Clocks;
import wickbench.bench.run.Moment;

/** Clocks that stand until a test lets time pass; safe for several threads. */
final class BenchTime implements Clocks {
    private final Instant wall = InstantSource.system().instant();
    private Duration since = Duration.ofHours(3);
    private Duration moved = Duration.ZERO;

    @Override
    public synchronized Moment now() {
        return new Moment(wall.plus(since).plus(moved), "test", since);
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
