package wickbench.drill;

/** Between what a screen is told, 0 to 255, and the light it gives, 0 to 1 (IEC 61966-2-1). */
public final class Srgb {
    /** The brightest code. */
    public static final int WHITE = 255;

    private static final double[] LIGHT = new double[WHITE + 1];
    private static final double[] WEIGHTS = {0.2126, 0.7152, 0.0722};

    static {
        for (int code = 0; code <= WHITE; code++) {
            double c = code / (double) WHITE;
            LIGHT[code] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
    }

    private Srgb() {}

    /** Returns the light of a code. */
    public static double light(int code) {
        return LIGHT[code];
    }

    /** Returns the highest code whose light is not above {@code light}; 0 below the darkest, {@value #WHITE} above the brightest. */
    static int below(double light) {
        int low = 0;
        int high = WHITE;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (LIGHT[middle] <= light) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Returns the luminance of red, green and blue light. */
    static double luminance(double red, double green, double blue) {
        return WEIGHTS[0] * red + WEIGHTS[1] * green + WEIGHTS[2] * blue;
    }
}
