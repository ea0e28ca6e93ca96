package wickbench.reading.plan;

import java.time.Duration;

/**
 * A strip with its times, counted from the moment of the plan.
 *
 * @param dipStart when hands-on work begins
 * @param started when the liquid is in the window
 * @param readStart when the look begins
 * @param running whether the strip was started before the plan was made
 */
public record PlannedStrip(PlanStrip strip, Duration dipStart, Duration started, Duration readStart, boolean running) {

    /** Returns when the window opens. */
    public Duration opens() {
        return started.plus(strip.develop());
    }

    /** Returns when the window closes. */
    public Duration closes() {
        return opens().plus(strip.window());
    }

    public Duration readEnd() {
        return readStart.plus(strip.look());
    }

    /** Returns how long the strip waits for its look after it has developed. */
    public Duration lateness() {
        return readStart.minus(opens());
    }
}
