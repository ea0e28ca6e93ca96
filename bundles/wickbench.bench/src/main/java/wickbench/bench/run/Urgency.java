package wickbench.bench.run;

import java.time.Duration;
import java.util.Comparator;

/** What closes first comes first; strips that have not started come last, by number. */
final class Urgency {
    private static final Duration NEVER = Duration.ofDays(36_500);

    private Urgency() {}

    static Comparator<StripState> first(Moment now) {
        return Comparator.<StripState, Duration>comparing(strip -> closesIn(strip, now))
                .thenComparing(StripState::number);
    }

    private static Duration closesIn(StripState strip, Moment now) {
        return strip.elapsed(now)
                .map(elapsed -> strip.strip().closes().minus(elapsed.span()))
                .orElse(NEVER);
    }
}
