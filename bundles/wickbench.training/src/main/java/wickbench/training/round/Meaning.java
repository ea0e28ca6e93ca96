package wickbench.training.round;

import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.reading.Patterns;

/** What the lines of a strip say by themselves. */
public final class Meaning {
    private Meaning() {}

    public static Outcome of(Strip strip) {
        return Patterns.of(strip.format()).stream()
                .filter(pattern -> pattern.strip().equals(strip))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no pattern for " + strip))
                .outcome();
    }
}
