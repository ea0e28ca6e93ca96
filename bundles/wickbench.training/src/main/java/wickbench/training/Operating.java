package wickbench.training;

import java.util.List;

/**
 * The operating characteristic of a design, in chances from 0 to 1; every near-limit strip counts as one with a line.
 *
 * @param poorPasses the chance that a poor reader passes
 * @param goodFails the chance that a good reader fails
 * @param curve the chance to pass against the chance of seeing a faint line, all else as the good reader
 */
public record Operating(Design design, Skill poor, Skill good, double poorPasses, double goodFails, List<Point> curve) {
    public Operating {
        curve = List.copyOf(curve);
    }

    /** A point of the curve. */
    public record Point(double near, double passes) {}
}
