package wickbench.bench.run;

import java.time.Duration;
import wickbench.api.words.Coded;

/**
 * Something that must be heard.
 *
 * @param strip the strip's number
 * @param late how long after its moment it was told
 * @param closesIn how long the window is still open; negative once it has closed
 */
public record Alarm(Kind kind, int strip, Duration late, Duration closesIn) {

    /** Why it rings, most urgent first. */
    public enum Kind implements Coded {
        /** The window closes soon, and nobody has looked. */
        CLOSES_SOON,
        /** The window opens. */
        OPENS,
        /** The window has closed, and nobody has looked. */
        MISSED
    }
}
