package wickbench.drill;

import java.util.Random;

/** What makes a membrane uneven: a grain from point to point, a mottle of patches, and light from one side. Follows from a seed. */
final class Texture {
    /** So many even chances from −1 to 1 add up to a spread of 1 and reach as far as their number. */
    private static final int CHANCES = 3;

    /** The spread that is left when patches run into one another: the mean of s² + (1 − s)² of the smooth step s. */
    private static final double SMOOTHED = 26.0 / 35.0;

    /** How many spreads grain and mottle reach at most: they are sums of even chances, not bells. */
    static final double REACH = CHANCES / SMOOTHED;

    private final StripWindow window;
    private final double[] field;

    private Texture(StripWindow window, double[] field) {
        this.window = window;
        this.field = field;
    }

    static Texture of(Optics optics, StripWindow window, long seed) {
        Random chance = new Random(seed);
        double turn = 2 * Math.PI * chance.nextDouble();
        Patches patches = new Patches(window, chance);
        double[] field = new double[window.width() * window.height()];
        for (int y = 0; y < window.height(); y++) {
            for (int x = 0; x < window.width(); x++) {
                double across = 2.0 * x / (window.width() - 1) - 1;
                double along = 2.0 * y / (window.height() - 1) - 1;
                double light = (Math.cos(turn) * across + Math.sin(turn) * along) / Math.sqrt(2);
                double uneven = optics.grain() * spread(chance) + optics.mottle() * patches.at(x, y);
                field[y * window.width() + x] = (1 + optics.gradient() * light) * (1 + uneven);
            }
        }
        return new Texture(window, field);
    }

    /** How bright a point is; 1 on the whole. */
    double at(int x, int y) {
        return field[y * window.width() + x];
    }

    private static double spread(Random chance) {
        double sum = 0;
        for (int i = 0; i < CHANCES; i++) {
            sum += 2 * chance.nextDouble() - 1;
        }
        return sum;
    }

    /** Patches about three lines wide, each running smoothly into the next. */
    private static final class Patches {
        private final int side;
        private final int across;
        private final double[] heights;

        Patches(StripWindow window, Random chance) {
            side = 3 * window.line();
            across = window.width() / side + 2;
            heights = new double[across * (window.height() / side + 2)];
            for (int i = 0; i < heights.length; i++) {
                heights[i] = spread(chance);
            }
        }

        double at(int x, int y) {
            int column = x / side;
            int row = y / side;
            double right = smooth(x % side / (double) side);
            double down = smooth(y % side / (double) side);
            double upper = mix(height(column, row), height(column + 1, row), right);
            double lower = mix(height(column, row + 1), height(column + 1, row + 1), right);
            return mix(upper, lower, down) / SMOOTHED;
        }

        private double height(int column, int row) {
            return heights[row * across + column];
        }

        private static double smooth(double part) {
            return part * part * (3 - 2 * part);
        }

        private static double mix(double from, double to, double part) {
            return from + (to - from) * part;
        }
    }
}
