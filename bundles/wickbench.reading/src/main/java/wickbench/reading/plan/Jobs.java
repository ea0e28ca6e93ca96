package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * The strips as numbers, in milliseconds, put into classes of equal strips.
 *
 * <p>Equal strips need no order but one: whichever was started first is read first, for an exchange of two looks that are in the
 * other order keeps every sum and every window. So a plan is an order of classes, not of strips.
 */
final class Jobs {
    /** The start of a strip that waits for its start. */
    static final long NOT_STARTED = Long.MIN_VALUE;

    final int count;
    final long[] hands;
    final long[] develop;
    final long[] look;
    final long[] slack;
    final long[] started;
    /** The jobs of each class: running ones by their start, then the others; longest tail first among classes. */
    final int[][] classes;
    /** How many of each class run already. */
    final int[] running;

    final long freeFrom;
    /** All times are multiples of this, and so are the least total and the least waits. */
    final long unit;

    private Jobs(long[] hands, long[] develop, long[] look, long[] slack, long[] started, long freeFrom) {
        this.count = hands.length;
        this.hands = hands;
        this.develop = develop;
        this.look = look;
        this.slack = slack;
        this.started = started;
        this.freeFrom = freeFrom;
        unit = Stream.of(hands, develop, look, slack, started)
                .flatMapToLong(LongStream::of)
                .filter(time -> time != NOT_STARTED)
                .reduce(freeFrom, Jobs::divisor);
        classes = classes();
        running = new int[classes.length];
        for (int c = 0; c < classes.length; c++) {
            for (int job : classes[c]) {
                running[c] += isRunning(job) ? 1 : 0;
            }
        }
    }

    /** Takes the running strips that are kept and all that wait. */
    static Jobs of(List<StartedStrip> kept, PlanRequest request) {
        List<PlanStrip> strips = new ArrayList<>();
        kept.forEach(strip -> strips.add(strip.strip()));
        strips.addAll(request.toStart());
        long[] started = new long[strips.size()];
        Arrays.fill(started, NOT_STARTED);
        for (int job = 0; job < kept.size(); job++) {
            started[job] = kept.get(job).startedAt().toMillis();
        }
        return new Jobs(
                millis(strips, PlanStrip::handsOn),
                millis(strips, PlanStrip::develop),
                millis(strips, PlanStrip::look),
                millis(strips, request.rule()::slack),
                started,
                request.freeFrom().toMillis());
    }

    /** Returns the jobs as they are seen by one who reads a plan from its end: looks come first, hands-on work last. */
    Jobs backwards() {
        return new Jobs(look, develop, hands, slack, started, freeFrom);
    }

    /** Returns how many blocks of work there are: a look for each strip, and hands-on work for each that waits. */
    int blocks() {
        int blocks = 2 * count;
        for (int started : running) {
            blocks -= started;
        }
        return blocks;
    }

    /** Returns how long all blocks take together. */
    long work() {
        long work = Arrays.stream(look).sum();
        for (int job = 0; job < count; job++) {
            work += isRunning(job) ? 0 : hands[job];
        }
        return work;
    }

    boolean isRunning(int job) {
        return started[job] != NOT_STARTED;
    }

    boolean anyRunning() {
        return Arrays.stream(running).anyMatch(count -> count > 0);
    }

    /** Returns the time from the end of hands-on work to the end of the earliest look. */
    long tail(int job) {
        return develop[job] + look[job];
    }

    /** Returns the greatest that divides both. */
    static long divisor(long one, long other) {
        return other == 0 ? Math.abs(one) : divisor(other, one % other);
    }

    private record Kind(long hands, long develop, long look, long slack) {}

    private int[][] classes() {
        Map<Kind, List<Integer>> kinds = new LinkedHashMap<>();
        for (int job = 0; job < count; job++) {
            Kind kind = new Kind(hands[job], develop[job], look[job], slack[job]);
            kinds.computeIfAbsent(kind, key -> new ArrayList<>()).add(job);
        }
        // what runs comes first, in order of start; the others keep their order
        Comparator<Integer> order = Comparator.comparing((Integer job) -> !isRunning(job))
                .thenComparing(job -> isRunning(job) ? started[job] : 0);
        return kinds.values().stream()
                .sorted(Comparator.comparing((List<Integer> jobs) -> -tail(jobs.get(0))))
                .map(jobs ->
                        jobs.stream().sorted(order).mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    private static long[] millis(List<PlanStrip> strips, Function<PlanStrip, Duration> of) {
        return strips.stream().map(of).mapToLong(Duration::toMillis).toArray();
    }
}
