package wickbench.reading.plan;

import java.util.List;

/**
 * Looks for the best order of work in layers: all beginnings of one piece, of two, and so on, as many as are worth going on from.
 *
 * <p>A layer that grows too wide is cut; then something better may lie in what was left out. When no layer had to be cut, or nothing
 * that was left out can be better than what was found, that is the best.
 */
final class Layers {
    /** How many numbers are as much work as comparing two beginnings. */
    private static final int COMPARED = 4;

    private final Kinds kinds;
    private final Jobs jobs;
    private final Goal goal;
    private final Bound bound;
    private final DeadEnds deadEnds;
    private final int strips;
    private Layer next;
    private long effort;
    private long leftOut;

    Layers(Jobs jobs, Goal goal) {
        this.jobs = jobs;
        this.goal = goal;
        kinds = new Kinds(jobs, goal.slack());
        bound = new Bound(kinds);
        deadEnds = new DeadEnds(kinds);
        strips = jobs.count;
    }

    /** Searches with layers of this width; returns what all plans that were left out have at least. */
    long search(int width) {
        leftOut = Long.MAX_VALUE;
        Partial nothing = Partial.nothing(kinds, goal.countsWaits());
        nothing.bound = bound.of(nothing);
        List<Partial> layer = List.of(nothing);
        for (int depth = 0; depth < kinds.blocks && !layer.isEmpty(); depth++) {
            next = new Layer(goal, width);
            for (Partial plan : layer) {
                goOn(plan);
            }
            layer = next.kept();
            leftOut = Math.min(leftOut, next.leftOut());
        }
        layer.stream().filter(goal::hopes).forEach(plan -> goal.keep(Order.of(jobs, plan.last)));
        return leftOut;
    }

    /** Returns how many numbers were reckoned. */
    long effort() {
        return effort;
    }

    private void goOn(Partial plan) {
        for (int kind = 0; kind < kinds.count; kind++) {
            if (plan.dipped[kind] < kinds.strips[kind]) {
                keep(plan, plan.start(kinds, kind));
            }
        }
        for (int strip = 0; strip < plan.open.length; strip++) {
            if (!passesOver(plan, strip)) {
                keep(plan, plan.read(kinds, strip, goal.longer(plan)));
            }
        }
    }

    /** Tells whether a strip that was started before must be read before. */
    private boolean passesOver(Partial plan, int strip) {
        for (int i = 0; i < strip; i++) {
            if (kinds.noSlower(plan.open[i], plan.open[strip])) {
                return true;
            }
        }
        return false;
    }

    private void keep(Partial before, Partial plan) {
        if (plan == null) {
            return;
        }
        effort += plan.zone.size() + strips;
        plan.bound = Math.max(before.bound, bound.of(plan));
        if (plan.bound > goal.latestEnd() || !plan.freeBy((int) goal.latestEnd() - bound.rest(plan))) {
            return;
        }
        plan.addWaits(kinds, before.allWaits);
        if (!goal.hopes(plan)) {
            return;
        }
        effort += plan.zone.size();
        if (!deadEnds.is(plan, goal.longer(plan))) {
            plan.addWaits(kinds, before.allWaits);
            effort += COMPARED * next.add(plan);
        }
    }
}
