package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wickbench.reading.plan.PlanFault.Kind;

/** Proves that a plan can be done, knowing nothing of how it was made. */
public final class PlanCheck {
    private final PlanRequest request;
    private final RunPlan plan;
    private final List<PlanFault> faults = new ArrayList<>();

    private PlanCheck(PlanRequest request, RunPlan plan) {
        this.request = request;
        this.plan = plan;
    }

    /** A stretch of time in which the operator is busy with a strip. */
    private record Busy(String strip, Duration from, Duration to) {}

    /** Returns everything that is wrong; nothing when the plan keeps all rules of the request. */
    public static List<PlanFault> faults(PlanRequest request, RunPlan plan) {
        PlanCheck check = new PlanCheck(request, plan);
        check.eachStripOnce();
        check.lostOnesRan();
        plan.strips().forEach(check::strip);
        check.oneAtATime();
        check.sums();
        return List.copyOf(check.faults);
    }

    private void eachStripOnce() {
        Map<String, Integer> named = new HashMap<>();
        request.strips().forEach(strip -> named.merge(strip.name(), 1, Integer::sum));
        plan.strips().forEach(strip -> named.merge(strip.strip().name(), -1, Integer::sum));
        plan.lost().forEach(lost -> named.merge(lost.strip().name(), -1, Integer::sum));
        named.forEach((name, left) -> faultIf(left != 0, Kind.NOT_ONCE, name, Duration.ZERO));
    }

    private void lostOnesRan() {
        plan.lost()
                .forEach(lost -> faultIf(
                        !request.running().contains(lost),
                        Kind.WRONGLY_LOST,
                        lost.strip().name(),
                        Duration.ZERO));
    }

    private void strip(PlannedStrip planned) {
        String name = planned.strip().name();
        start(planned, name);
        Duration hands = planned.started().minus(planned.dipStart());
        faultIf(!hands.equals(planned.strip().handsOn()), Kind.HANDS_OFF, name, hands);
        Duration after = planned.readStart()
                .minus(planned.started())
                .minus(planned.strip().develop());
        faultIf(after.isNegative(), Kind.EARLY, name, after.negated());
        Duration over = after.minus(allowed(planned.strip()));
        faultIf(over.compareTo(Duration.ZERO) > 0, Kind.LATE, name, over);
    }

    private void start(PlannedStrip planned, String name) {
        StartedStrip asRun = new StartedStrip(planned.strip(), planned.started());
        boolean known = planned.running()
                ? request.running().contains(asRun)
                : request.toStart().contains(planned.strip());
        faultIf(!known, Kind.START_MOVED, name, Duration.ZERO);
    }

    private Duration allowed(PlanStrip strip) {
        return switch (request.rule()) {
            case EXACT -> Duration.ZERO;
            case START -> strip.window();
            case END -> strip.window().minus(strip.look());
        };
    }

    private void oneAtATime() {
        List<Busy> blocks = plan.strips().stream()
                .flatMap(PlanCheck::work)
                .sorted(Comparator.comparing(Busy::from))
                .toList();
        Duration free = request.freeFrom();
        Kind kind = Kind.TOO_SOON;
        for (Busy block : blocks) {
            Duration over = free.minus(block.from());
            faultIf(over.compareTo(Duration.ZERO) > 0, kind, block.strip(), over);
            free = block.to();
            kind = Kind.OVERLAP;
        }
    }

    private static Stream<Busy> work(PlannedStrip planned) {
        String name = planned.strip().name();
        Busy look = new Busy(
                name,
                planned.readStart(),
                planned.readStart().plus(planned.strip().look()));
        return planned.running()
                ? Stream.of(look)
                : Stream.of(new Busy(name, planned.dipStart(), planned.started()), look);
    }

    private void sums() {
        Duration end = plan.strips().stream()
                .map(strip -> strip.readStart().plus(strip.strip().look()))
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
        faultIf(!end.equals(plan.total()), Kind.SUM, "", end.minus(plan.total()));
        faultIf(plan.bound().compareTo(end) > 0, Kind.SUM, "", plan.bound().minus(end));
        Duration waits = plan.strips().stream()
                .map(strip -> strip.readStart()
                        .minus(strip.started())
                        .minus(strip.strip().develop()))
                .reduce(Duration.ZERO, Duration::plus);
        faultIf(!waits.equals(plan.lateness()), Kind.SUM, "", waits.minus(plan.lateness()));
    }

    private void faultIf(boolean wrong, Kind kind, String strip, Duration by) {
        if (wrong) {
            faults.add(new PlanFault(kind, strip, by));
        }
    }
}
