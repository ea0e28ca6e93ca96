package wickbench.demo;

import java.time.Instant;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Queue;

/** What is to happen when; of two things at one instant the one planned first comes first. */
final class Agenda {
    private final Queue<Planned> planned =
            new PriorityQueue<>(Comparator.comparing(Planned::when).thenComparing(Planned::order));
    private long order;

    private record Planned(Instant when, long order, Runnable act) {}

    void at(Instant when, Runnable act) {
        planned.add(new Planned(when, order++, act));
    }

    /** Tells whether something is to happen before {@code end}. */
    boolean has(Instant end) {
        return !planned.isEmpty() && planned.peek().when().isBefore(end);
    }

    /** Returns when the next thing is to happen. */
    Instant next() {
        return planned.element().when();
    }

    /** Lets the next thing happen; it may plan others, none of them earlier than itself. */
    void step() {
        planned.remove().act().run();
    }
}
