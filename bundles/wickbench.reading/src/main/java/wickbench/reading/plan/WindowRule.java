package wickbench.reading.plan;

import java.time.Duration;
import wickbench.api.words.Coded;

/** What must lie inside the reading window. */
public enum WindowRule implements Coded {
    /** The whole look: it begins when the strip has developed, or later, and ends before the window closes. */
    END,
    /** The beginning of the look. */
    START,
    /** The look begins in the very moment in which the strip has developed. */
    EXACT;

    /** Returns by how much the look may begin after the strip has developed; negative when it cannot be in time. */
    public Duration slack(PlanStrip strip) {
        return switch (this) {
            case EXACT -> Duration.ZERO;
            case START -> strip.window();
            case END -> strip.window().minus(strip.look());
        };
    }
}
