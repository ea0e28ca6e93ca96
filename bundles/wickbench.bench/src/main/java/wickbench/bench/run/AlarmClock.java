package wickbench.bench.run;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Knows which alarms are due and when the next one is; each rings once for each start of a strip.
 *
 * <p>What is due at the same moment comes in the order in which the windows close.
 */
final class AlarmClock {
    /** Before a window closes; in a short window, half of it. Common practice, no source. */
    private static final Duration SOON = Duration.ofSeconds(15);

    private final Set<Rung> rung = new HashSet<>();

    private record Rung(int strip, Moment started, Alarm.Kind kind) {}

    private record Due(Rung what, Duration in, Duration closesIn) {
        Alarm alarm() {
            return new Alarm(what.kind(), what.strip(), in.negated(), closesIn);
        }
    }

    /** Returns what is due now and has not rung yet. */
    List<Alarm> ring(RunState run, Moment now) {
        List<Due> due = pending(run, now)
                .filter(alarm -> alarm.in().compareTo(Duration.ZERO) <= 0)
                .toList();
        due.forEach(alarm -> rung.add(alarm.what()));
        return newest(due).stream()
                .sorted(Comparator.comparing(Due::closesIn)
                        .thenComparing(alarm -> alarm.what().strip()))
                .map(Due::alarm)
                .toList();
    }

    /** Of several alarms of one strip, as after a closed lid, only the last one still says how things stand. */
    private static List<Due> newest(List<Due> due) {
        List<Due> kept = new ArrayList<>();
        for (Due alarm : due) {
            boolean later = due.stream()
                    .anyMatch(other -> other.what().strip() == alarm.what().strip()
                            && other.in().compareTo(alarm.in()) > 0);
            if (!later) {
                kept.add(alarm);
            }
        }
        return kept;
    }

    /** Returns how long it is until the next alarm. */
    Optional<Duration> next(RunState run, Moment now) {
        return pending(run, now)
                .map(Due::in)
                .min(Comparator.naturalOrder())
                .map(in -> in.isNegative() ? Duration.ZERO : in);
    }

    private Stream<Due> pending(RunState run, Moment now) {
        return run.strips().stream()
                .filter(strip -> strip.started().isPresent()
                        && strip.looked().isEmpty()
                        && !strip.phase(now).over()
                        && !strip.lost())
                .flatMap(strip -> alarms(strip, now))
                .filter(alarm -> !rung.contains(alarm.what()));
    }

    private static Stream<Due> alarms(StripState strip, Moment now) {
        Duration elapsed = strip.elapsed(now).orElseThrow().span();
        Duration closes = strip.strip().closes();
        Duration half = strip.strip().window().dividedBy(2);
        Duration soon = closes.minus(half.compareTo(SOON) < 0 ? half : SOON);
        // both ends of the window stand, so it is missed one millisecond after its end
        return Stream.of(
                due(strip, Alarm.Kind.OPENS, strip.strip().develop(), elapsed),
                due(strip, Alarm.Kind.CLOSES_SOON, soon, elapsed),
                due(strip, Alarm.Kind.MISSED, closes.plusMillis(1), elapsed));
    }

    private static Due due(StripState strip, Alarm.Kind kind, Duration at, Duration elapsed) {
        return new Due(
                new Rung(strip.number(), strip.started().orElseThrow(), kind),
                at.minus(elapsed),
                strip.strip().closes().minus(elapsed));
    }
}
