package wickbench.figures.seeing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * A staircase: so many rightly seen in a row make it fainter, one missed makes it stronger (Levitt, J. Acoust. Soc. Am. 49:467, 1971).
 *
 * @param level the level to show next
 * @param step the step, in the unit of the level
 * @param down how many seen in a row make one step down; it settles where the chance to see is 0.5^(1/down)
 * @param seen how many were seen in a row at this level
 * @param direction the last step: −1 down, 1 up, 0 none yet
 * @param reversals the levels at which the direction turned
 */
public record Staircase(double level, double step, int down, int seen, int direction, List<Double> reversals) {
    public Staircase {
        Inputs.finite("level", level);
        Inputs.positive("step", step);
        Inputs.size("down", down);
        reversals = List.copyOf(reversals);
    }

    public static Staircase start(double level, double step, int down) {
        return new Staircase(level, step, down, 0, 0, List.of());
    }

    /** Returns the staircase after one answer. */
    public Staircase answered(boolean yes) {
        if (yes && seen + 1 < down) {
            return new Staircase(level, step, down, seen + 1, direction, reversals);
        }
        int to = yes ? -1 : 1;
        List<Double> turned = new ArrayList<>(reversals);
        if (direction == -to) {
            turned.add(level);
        }
        return new Staircase(level + to * step, step, down, 0, to, turned);
    }

    /** Returns the mean of the last reversals; none before there are so many. */
    public OptionalDouble meanOfLast(int count) {
        Inputs.size("count", count);
        return reversals.size() < count
                ? OptionalDouble.empty()
                : reversals.subList(reversals.size() - count, reversals.size()).stream()
                        .mapToDouble(Double::doubleValue)
                        .average();
    }

    /** Returns the chance to see at which a staircase settles, 0.5^(1/down). */
    public static double target(int down) {
        Inputs.size("down", down);
        return Math.pow(0.5, 1d / down);
    }

    /**
     * Returns the step up per step down of a weighted staircase that settles at a share p, p/(1 − p) (Kaernbach, Percept. Psychophys.
     * 49:227, 1991).
     */
    public static double weightedStep(double share) {
        if (!(share > 0 && share < 1)) {
            throw NoAnswer.of("share", "level.expected", share);
        }
        return share / (1 - share);
    }
}
