package wickbench.figures.sampling;

import wickbench.figures.Inputs;
import wickbench.figures.distribution.Poisson;

/**
 * A plan for rare faults, whose number in the sample follows a Poisson law.
 *
 * @param accept the most faults with which a lot is still accepted, 0 to 100000
 */
public record PoissonPlan(int accept) {
    private static final int LARGEST = 100_000;

    public PoissonPlan {
        Inputs.whole("accept", accept, 0, LARGEST);
    }

    /** Returns the chance of acceptance when {@code expected} = n·p faults are expected in the sample. */
    public double acceptance(double expected) {
        Inputs.notNegative("expected", expected);
        return expected == 0 ? 1 : new Poisson(expected).atMost(accept);
    }

    /** Returns the unity value: n·p that passes with the chance {@code chance}. */
    public double unity(double chance) {
        Inputs.level("chance", chance);
        double to = accept + 1.0;
        while (acceptance(to) > chance) {
            to *= 2;
        }
        return Falling.crossing(this::acceptance, chance, 0, to);
    }
}
