package wickbench.bench.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wickbench.api.method.Method.Timing;
import wickbench.widgets.Meaning;
import wickbench.widgets.Spans;

/** How long a strip has run, and what that means for its reading; both ends of the window stand. */
record StripClock(Duration elapsed, Timing timing, boolean read) {
    /** Returns the clock of a strip; empty before it is started, or when it was read before it was started. */
    static Optional<StripClock> of(Optional<Instant> started, Optional<Instant> read, Instant now, Timing timing) {
        return started.map(start -> Duration.between(start, read.orElse(now)))
                .filter(span -> !span.isNegative())
                .map(span -> new StripClock(span, timing, read.isPresent()));
    }

    String words() {
        return BenchUiWords.get("clock." + (read ? "read." : "runs.") + state(), Spans.words(elapsed), rest());
    }

    Meaning meaning() {
        return switch (state()) {
            case "early" -> read ? Meaning.CAUTION : Meaning.NEUTRAL;
            case "window" -> Meaning.CALM;
            default -> Meaning.CAUTION;
        };
    }

    private String state() {
        if (elapsed.compareTo(timing.develop()) < 0) {
            return "early";
        }
        return elapsed.compareTo(end()) <= 0 ? "window" : "late";
    }

    /** Returns how long until the window opens, or until it closes once it is open. */
    private String rest() {
        Duration until = elapsed.compareTo(timing.develop()) < 0 ? timing.develop() : end();
        return Spans.words(until.minus(elapsed).abs());
    }

    private Duration end() {
        return timing.develop().plus(timing.window());
    }
}
