package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.reading.Times;

/** Spreads the strips of a run over the operator's hands: as many at once as can still be read in time. */
final class RunClock {
    private static final int HANDS_S = 40;
    private static final int MOST_AT_ONCE = 8;
    private static final double FORGOTTEN = 0.006;
    private static final double HASTY = 0.003;
    private static final double COLD = 0.006;
    private static final double SHAKEN_SHORT = 0.005;
    private static final double NOT_STATED = 0.004;

    private final Chance chance;

    RunClock(Chance chance) {
        this.chance = chance;
    }

    /** Returns the times of a run's strips, in their order. */
    List<Times> times(Run run) {
        List<Times> times = new ArrayList<>();
        Optional<Instant> fridge = Optional.empty();
        String kit = "";
        Instant free = run.begins();
        while (times.size() < run.tasks().size()) {
            List<Task> together = together(run.tasks(), times.size());
            Method method = together.get(0).method();
            if (!method.kit().equals(kit)) {
                kit = method.kit();
                fridge = Optional.of(outOfFridge(method, free));
            }
            times.addAll(times(together, fridge, free));
            free = free.plusSeconds(preparing(together.size()) + (long) HANDS_S * together.size())
                    .plus(method.timing().develop());
        }
        return times;
    }

    private List<Times> times(List<Task> together, Optional<Instant> fridge, Instant begins) {
        List<Times> times = new ArrayList<>();
        Instant start = begins.plusSeconds(preparing(together.size()));
        for (Task task : together) {
            times.add(strip(task, fridge, begins, start));
            start = start.plusSeconds(HANDS_S);
        }
        return times;
    }

    /** Returns the strips of one method from {@code from} on that can be started before the first must be read. */
    private static List<Task> together(List<Task> tasks, int from) {
        Method method = tasks.get(from).method();
        long most = Math.min(MOST_AT_ONCE, method.timing().develop().toSeconds() / HANDS_S);
        return tasks.stream()
                .skip(from)
                .limit(most)
                .takeWhile(task -> task.method().ref().equals(method.ref()))
                .toList();
    }

    private static long preparing(int strips) {
        return 60 + 20L * strips;
    }

    private Instant outOfFridge(Method method, Instant begins) {
        Duration warmUp = method.timing().warmUp().orElse(Duration.ZERO);
        int more = chance.happens(COLD) ? -chance.between(6, 12) : chance.between(2, 25);
        return begins.minus(warmUp).minus(Duration.ofMinutes(more));
    }

    private Times strip(Task task, Optional<Instant> fridge, Instant begins, Instant started) {
        Instant extracted = begins.plusSeconds(chance.between(5, 40));
        return new Times(
                fridge,
                task.extracted().or(() -> Optional.of(extracted)),
                shaken(task.method()),
                Optional.of(started),
                Optional.of(started.plus(waited(task.method()))));
    }

    private Optional<Duration> shaken(Method method) {
        int seconds = (int) method.timing().shake().orElse(Duration.ZERO).toSeconds();
        int more = chance.happens(SHAKEN_SHORT) ? -chance.between(10, 25) : chance.between(0, 9);
        return chance.happens(NOT_STATED) ? Optional.empty() : Optional.of(Duration.ofSeconds(seconds + more));
    }

    private Duration waited(Method method) {
        Duration develop = method.timing().develop();
        Duration window = method.timing().window();
        if (chance.happens(FORGOTTEN)) {
            return develop.plus(window).plusSeconds(chance.between(1, 200));
        }
        return develop.plusSeconds(
                chance.happens(HASTY) ? -chance.between(1, 45) : chance.between(0, (int) window.toSeconds() / 2));
    }
}
