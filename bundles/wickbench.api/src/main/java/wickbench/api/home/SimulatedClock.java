package wickbench.api.home;

import java.time.Instant;
import java.time.InstantSource;

/** A clock that stands until it is moved forward. */
public final class SimulatedClock implements InstantSource {
    private volatile Instant now;

    public SimulatedClock(Instant start) {
        now = start;
    }

    @Override
    public Instant instant() {
        return now;
    }

    /**
     * Moves the clock to {@code then}.
     *
     * @throws IllegalArgumentException when that lies in its past
     */
    public void moveTo(Instant then) {
        if (then.isBefore(now)) {
            throw new IllegalArgumentException("a simulated clock only goes forward: " + now + " to " + then);
        }
        now = then;
    }
}
