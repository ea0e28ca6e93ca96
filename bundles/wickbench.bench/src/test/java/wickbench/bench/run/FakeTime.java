package wickbench.bench.run;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.Supplier;

/** Time that passes when a test says so: both clocks, and whoever waits for them. */
public final class FakeTime implements Clocks, Later {
    private final PriorityQueue<Waiting> waiting =
            new PriorityQueue<>(Comparator.comparing(Waiting::at).thenComparing(Waiting::order));
    private final Supplier<Duration> wakesLate;
    private Duration since = Duration.ofHours(5);
    private Instant wall;
    private String boot = "boot-1";
    private int order;

    private record Waiting(Duration at, int order, Runnable act) {}

    public FakeTime(String wall) {
        this(wall, () -> Duration.ZERO);
    }

    /** @param wakesLate how much later than asked for the machine wakes those who wait */
    FakeTime(String wall, Supplier<Duration> wakesLate) {
        this.wall = Instant.parse(wall);
        this.wakesLate = wakesLate;
    }

    @Override
    public Moment now() {
        return new Moment(wall, boot, since);
    }

    /** Returns the clock on the wall. */
    public InstantSource wall() {
        return () -> wall;
    }

    @Override
    public void in(Duration wait, Runnable act) {
        waiting.add(new Waiting(since.plus(wait).plus(wakesLate.get()), order++, act));
    }

    /** Returns how many wait to be woken. */
    int waiting() {
        return waiting.size();
    }

    /** Lets time pass, waking everyone in turn. */
    public void pass(Duration span) {
        Duration end = since.plus(span);
        while (!waiting.isEmpty() && waiting.peek().at().compareTo(end) <= 0) {
            Waiting next = waiting.poll();
            forward(next.at());
            next.act().run();
        }
        forward(end);
    }

    public void seconds(long seconds) {
        pass(Duration.ofSeconds(seconds));
    }

    /** Lets the machine sleep: time passes, and nobody is woken until it is over. */
    public void sleep(Duration span) {
        forward(since.plus(span));
    }

    /** Sets the clock on the wall. */
    public void setWall(Duration by) {
        wall = wall.plus(by);
    }

    /** Turns the machine off and on again: what waited is gone, and the steady clock begins anew. */
    public void reboot(Duration off) {
        waiting.clear();
        wall = wall.plus(off);
        since = Duration.ofSeconds(20);
        boot = "boot-2";
    }

    /** Lets those who wait go, as when the program ends. */
    public void forgetWaiting() {
        waiting.clear();
    }

    private void forward(Duration to) {
        if (to.compareTo(since) > 0) {
            wall = wall.plus(to.minus(since));
            since = to;
        }
    }
}
