package wickbench.demo;

import java.util.List;
import java.util.Random;

/** Draws that depend on nothing but the seed; {@link Random}'s algorithm is part of the Java specification. */
final class Chance {
    private final Random random;

    Chance(long seed) {
        random = new Random(seed);
    }

    boolean happens(double probability) {
        return random.nextDouble() < probability;
    }

    /** Draws a whole number, both ends included. */
    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    /** Draws around zero with a standard deviation of one. */
    double normal() {
        return random.nextGaussian();
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
