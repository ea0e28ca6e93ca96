package wickbench.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import wickbench.figures.seeing.LeastEntropy;

/**
 * A drill under way: shows strips, takes the answer to each, and is over when the threshold is known well enough.
 *
 * <p>A value: {@link #answered} gives the next. Blanks and plain lines come at places drawn by lot; the other strips show the line that
 * tells most (see {@link LeastEntropy}).
 */
public final class Drill {
    /** Raised whenever the same seed and answers show or find something else. */
    public static final int MODEL = 1;

    /** What the limits of the threshold hold. */
    static final double CONFIDENCE = 0.9;

    private final DrillPlan plan;
    private final List<Lot> lots;
    private final LeastEntropy belief;
    private final List<Answer> answers;
    private final Optional<Shown> next;

    /** What was shown and whether a line was seen. */
    public record Answer(Shown shown, boolean seen) {}

    /** What was drawn for one strip before the drill began. */
    private record Lot(Shown.Kind kind, long seed) {}

    private Drill(DrillPlan plan, List<Lot> lots, LeastEntropy belief, List<Answer> answers) {
        this.plan = plan;
        this.lots = lots;
        this.belief = belief;
        this.answers = List.copyOf(answers);
        next = over() ? Optional.empty() : Optional.of(coming());
    }

    /** Begins; everything that is left to chance follows from the seed. */
    public static Drill start(DrillPlan plan, long seed) {
        return new Drill(plan, lots(plan, new Random(seed)), LeastEntropy.start(plan.grid()), List.of());
    }

    /** Returns a drill after so many answers; those that come after it is over are left out. */
    public static Drill after(DrillPlan plan, long seed, List<Boolean> answers) {
        Drill drill = start(plan, seed);
        for (boolean seen : answers) {
            drill = drill.over() ? drill : drill.answered(seen);
        }
        return drill;
    }

    public DrillPlan plan() {
        return plan;
    }

    /** Returns the strip to show; empty when the drill is over. */
    public Optional<Shown> next() {
        return next;
    }

    /** Returns the drill after the answer to the strip that {@link #next} shows. */
    public Drill answered(boolean seen) {
        Shown shown = next().orElseThrow(() -> new IllegalStateException("expected a drill that is not over"));
        LeastEntropy then = shown.contrast() == 0
                ? belief.answeredNothing(seen)
                : belief.answered(Math.log10(shown.contrast()), seen);
        List<Answer> more = new ArrayList<>(answers);
        more.add(new Answer(shown, seen));
        return new Drill(plan, lots, then, more);
    }

    public boolean over() {
        return answers.size() >= plan.most() || answers.size() >= plan.least() && narrow();
    }

    public List<Answer> answers() {
        return answers;
    }

    /** Returns how much of the drill is done, 0 to 1, for whoever waits; it may be over sooner. */
    public double done() {
        return over() ? 1 : answers.size() / (double) (answers.size() < plan.least() ? plan.least() : plan.most());
    }

    /** Returns what is known now. */
    public DrillResult result() {
        return DrillResult.of(this);
    }

    boolean narrow() {
        return contrastAt(1 - tail()) <= plan.narrow() * contrastAt(tail());
    }

    LeastEntropy belief() {
        return belief;
    }

    /** The contrast below which the threshold lies with a chance. */
    double contrastAt(double share) {
        return Math.pow(10, belief.thresholdAt(share));
    }

    static double tail() {
        return (1 - CONFIDENCE) / 2;
    }

    private Shown coming() {
        Lot lot = lots.get(answers.size());
        double contrast = switch (lot.kind()) {
            case BLANK -> 0;
            case PLAIN -> DrillPlan.PLAIN;
            case FAINT -> Math.pow(10, belief.next());
        };
        return new Shown(answers.size() + 1, lot.kind(), contrast, lot.seed());
    }

    private static List<Lot> lots(DrillPlan plan, Random chance) {
        List<Lot> lots = new ArrayList<>();
        while (lots.size() < plan.most()) {
            List<Shown.Kind> block = new ArrayList<>();
            for (int i = 0; i < DrillPlan.BLOCK; i++) {
                boolean blank = i < plan.blanks();
                boolean plain = !blank && i < plan.blanks() + plan.plain();
                block.add(blank ? Shown.Kind.BLANK : plain ? Shown.Kind.PLAIN : Shown.Kind.FAINT);
            }
            Collections.shuffle(block, chance);
            block.forEach(kind -> lots.add(new Lot(kind, chance.nextLong())));
        }
        return List.copyOf(lots);
    }
}
