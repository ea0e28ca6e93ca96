package wickbench.drill;

import java.util.Random;

/**
 * A reader whose threshold is known.
 *
 * @param threshold contrast at which half of what can be seen is seen
 * @param slope per decade of contrast
 */
record SimulatedReader(double threshold, double slope, double guess, double lapse) {

    /** Whether this reader calls a line, by a chance. */
    boolean sees(double contrast, Random chance) {
        double seeing = contrast == 0 ? 0 : 1 / (1 + Math.exp(-slope * Math.log10(contrast / threshold)));
        return chance.nextDouble() < guess + (1 - guess - lapse) * seeing;
    }

    Drill through(DrillPlan plan, long seed) {
        Random chance = new Random(seed * 7919 + 17);
        Drill drill = Drill.start(plan, seed);
        while (!drill.over()) {
            drill = drill.answered(sees(drill.next().orElseThrow().contrast(), chance));
        }
        return drill;
    }
}
