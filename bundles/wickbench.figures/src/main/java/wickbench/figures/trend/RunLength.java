package wickbench.figures.trend;

import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Normal;

/**
 * Average run lengths: how many points pass, on average, before a chart of independent normal values signals.
 *
 * <p>The integral equations of Page (Biometrika 41:100, 1954) for the sums and of Crowder (Technometrics 29:401, 1987) for the
 * average, solved by Gauss–Legendre quadrature, up to a length of 1e9. Shifts are in standard deviations from the target.
 */
public final class RunLength {
    private static final double LARGEST_SHIFT = 10;
    private static final double LONGEST = 1e9;

    private RunLength() {}

    /** Returns 1/P(|Z + shift| &gt; width): points with limits at ± {@code width} standard deviations. */
    public static double limits(double width, double shift) {
        Inputs.within("width", width, 0.1, 8);
        shift(shift);
        return 1 / (Normal.above(width - shift) + Normal.above(width + shift));
    }

    /** Returns that of the two-sided tabular sum with k and h in standard deviations, from 1/ARL = 1/ARL⁺ + 1/ARL⁻. */
    public static double cusum(double k, double h, double shift) {
        Inputs.within("k", k, 0, 5);
        Inputs.within("h", h, 0.1, 10);
        shift(shift);
        return known(1 / (1 / oneSided(k, h, shift) + 1 / oneSided(k, h, -shift)));
    }

    /** Returns that of the moving average with weight λ and the limits that hold after many points. */
    public static double ewma(double weight, double width, double shift) {
        Inputs.within("lambda", weight, 0.01, 1);
        Inputs.within("L", width, 0.1, 6);
        shift(shift);
        double half = width * Math.sqrt(weight / (2 - weight));
        return known(Nodes.between(-half, half)
                .solve(0, z -> 0, (z, x) -> density((x - (1 - weight) * z) / weight - shift) / weight));
    }

    /** Solves L(z) = 1 + L(0)Φ(k − z − δ) + ∫₀ʰ L(x)φ(x + k − z − δ) dx for L(0). */
    private static double oneSided(double k, double h, double shift) {
        return Nodes.between(0, h).solve(0, z -> Normal.below(k - z - shift), (z, x) -> density(x + k - z - shift));
    }

    /** The longer the run, the nearer the equation is to having no solution; beyond this the digits are gone. */
    private static double known(double length) {
        if (!(length >= 1 && length < LONGEST)) {
            throw NoAnswer.of("h", "trend.run-too-long", (long) LONGEST);
        }
        return length;
    }

    private static void shift(double shift) {
        Inputs.within("shift", shift, -LARGEST_SHIFT, LARGEST_SHIFT);
    }

    private static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }
}
