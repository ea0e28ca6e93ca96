package wickbench.reading.plan;

import java.time.Duration;

/**
 * A strip that was started before the plan is made.
 *
 * @param startedAt when the liquid was in the window, counted from the moment of the plan: negative, unless hands are at it now
 */
public record StartedStrip(PlanStrip strip, Duration startedAt) {
    public StartedStrip {
        startedAt = Millis.whole(startedAt);
    }
}
