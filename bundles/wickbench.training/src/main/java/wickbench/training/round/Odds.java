package wickbench.training.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import wickbench.figures.distribution.Binomial;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PassRule;
import wickbench.training.Skill;
import wickbench.training.StripClass;

/**
 * What a design tells apart: sums of binomial chances, strips judged independently of one another.
 *
 * <p>Every near-limit strip counts as one with a line, since nobody knows yet which have none; readings outside the window are no
 * matter of seeing and do not enter.
 */
public final class Odds {
    /** A poor reader passes a suggested design at most this often, where the design is large enough. */
    static final double POOR_AT_MOST = 0.05;

    private static final int CURVE_STEPS = 40;
    private static final double CURVE_FROM = 0.2;

    private Odds() {}

    public static Operating of(Design design, Skill poor, Skill good) {
        List<Operating.Point> curve = new ArrayList<>();
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double near = CURVE_FROM + (1 - CURVE_FROM) * i / CURVE_STEPS;
            curve.add(new Operating.Point(near, passes(design, good.withNear(near))));
        }
        return new Operating(design, poor, good, passes(design, poor), fails(design, good), curve);
    }

    /** Returns the chance to pass. */
    static double passes(Design design, Skill skill) {
        return parts(design, skill).map(part -> part.within).reduce(1, (one, other) -> one * other);
    }

    /** Returns the chance to fail, to nearly all digits also where it is small. */
    static double fails(Design design, Skill skill) {
        return -Math.expm1(
                parts(design, skill).map(part -> Math.log1p(-part.beyond)).reduce(0, Double::sum));
    }

    private static Parts parts(Design design, Skill skill) {
        PassRule rule = design.rule();
        return new Parts(List.of(
                Part.of(design.of(StripClass.NEAR_LIMIT), 1 - skill.near(), rule.nearMissed()),
                Part.of(
                        design.of(StripClass.CLEAR) + design.of(StripClass.HOOK),
                        1 - skill.clear(),
                        rule.clearMissed()),
                Part.of(design.of(StripClass.BLANK), skill.alarm(), rule.falseAlarms()),
                Part.of(design.of(StripClass.INVALID), 1 - skill.invalid(), rule.invalidMissed())));
    }

    /** The parts of the rule, which are kept or broken each for itself. */
    private record Parts(List<Part> all) {
        DoubleStream map(java.util.function.ToDoubleFunction<Part> of) {
            return all.stream().mapToDouble(of);
        }
    }

    /**
     * Mistakes of one kind.
     *
     * @param within the chance of so many or fewer
     * @param beyond the chance of more
     */
    private record Part(double within, double beyond) {
        static Part of(int strips, double mistake, int allowed) {
            if (allowed >= strips) {
                return new Part(1, 0);
            }
            Binomial mistakes = new Binomial(strips, mistake);
            return new Part(mistakes.atMost(allowed), mistakes.above(allowed));
        }
    }

    /** Returns the rule that allows the most misses near the limit and still keeps a poor reader out. */
    static PassRule suggested(Map<StripClass, Integer> strips, Skill poor) {
        int near = strips.getOrDefault(StripClass.NEAR_LIMIT, 0);
        PassRule rule = rule(0);
        for (int misses = 1; misses < near; misses++) {
            if (passes(new Design(strips, rule(misses)), poor) <= POOR_AT_MOST) {
                rule = rule(misses);
            }
        }
        return rule;
    }

    private static PassRule rule(int nearMissed) {
        return new PassRule(nearMissed, 0, 0, 0, 1);
    }
}
