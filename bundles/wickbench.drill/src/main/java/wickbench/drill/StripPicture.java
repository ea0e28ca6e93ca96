package wickbench.drill;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.distribution.Normal;

/**
 * The window of a strip as a screen shows it, its test line at a known contrast.
 *
 * <p>Contrast is that of Weber, (M − L)/M: L is the mean luminance of the rows of the line, M what the same rows would have without it,
 * both as light and not as codes. Codes are rounded up or down by chance such that the light is right on the whole, so a contrast
 * below one step of the codes is still shown.
 */
public final class StripPicture {
    /** The strongest contrast that can be drawn, a part of the luminance. */
    public static final double MOST = 0.5;

    private static final int COLOURS = 3;

    private final StripWindow window;
    private final byte[] codes;

    private StripPicture(StripWindow window, byte[] codes) {
        this.window = window;
        this.codes = codes;
    }

    /**
     * Draws a strip.
     *
     * @param contrast of the test line, 0 for none, at most {@link #MOST}
     * @param seed of the membrane and of rounding; the same seed draws the same membrane with any contrast
     */
    public static StripPicture draw(Optics optics, StripWindow window, double contrast, long seed) {
        Inputs.within("contrast", contrast, 0, MOST);
        Texture texture = Texture.of(optics, window, seed);
        double[] control = line(optics, window, texture, window.control(), optics.control());
        double[] test = line(optics, window, texture, window.test(), contrast);
        double[] membrane = optics.membrane();
        double[] taken = optics.taken();
        // apart from the membrane's, so that neither moves the other
        Random rounding = new Random(~seed);
        byte[] codes = new byte[window.width() * window.height() * COLOURS];
        int at = 0;
        for (int y = 0; y < window.height(); y++) {
            for (int x = 0; x < window.width(); x++) {
                for (int k = 0; k < COLOURS; k++) {
                    double left = (1 - taken[k] * control[y]) * (1 - taken[k] * test[y]);
                    codes[at++] = rounded(membrane[k] * texture.at(x, y) * left, rounding.nextDouble());
                }
            }
        }
        return new StripPicture(window, codes);
    }

    public int width() {
        return window.width();
    }

    public int height() {
        return window.height();
    }

    /** Returns red, green and blue of each point, row by row from the top. */
    public byte[] codes() {
        return codes.clone();
    }

    /** Returns the luminance of a point, 0 to 1. */
    public double luminance(int x, int y) {
        int at = (y * window.width() + x) * COLOURS;
        return Srgb.luminance(
                Srgb.light(codes[at] & 0xFF), Srgb.light(codes[at + 1] & 0xFF), Srgb.light(codes[at + 2] & 0xFF));
    }

    /** Returns the mean luminance of the rows of the test line. */
    public double testLine() {
        return IntStream.range(window.test(), window.test() + window.line())
                .mapToDouble(y -> IntStream.range(0, window.width())
                        .mapToDouble(x -> luminance(x, y))
                        .average()
                        .orElseThrow())
                .average()
                .orElseThrow();
    }

    /** What a line takes of each row: a band with soft edges that takes the stated part of the light of its own rows. */
    private static double[] line(Optics optics, StripWindow window, Texture texture, int first, double contrast) {
        double[] band = new double[window.height()];
        double edge = optics.soft() * window.line();
        for (int y = 0; y < band.length; y++) {
            double middle = y + 0.5;
            band[y] = Normal.below((middle - first) / edge) - Normal.below((middle - first - window.line()) / edge);
        }
        double light = 0;
        double taken = 0;
        for (int y = first; y < first + window.line(); y++) {
            for (int x = 0; x < window.width(); x++) {
                light += texture.at(x, y);
                taken += texture.at(x, y) * band[y];
            }
        }
        double scale = contrast * light / taken;
        return Arrays.stream(band).map(part -> part * scale).toArray();
    }

    /** The code above or below, by chance, so that their mean is the light. */
    private static byte rounded(double light, double chance) {
        int low = Srgb.below(light);
        if (low == Srgb.WHITE) {
            return (byte) low;
        }
        double part = (light - Srgb.light(low)) / (Srgb.light(low + 1) - Srgb.light(low));
        return (byte) (chance < part ? low + 1 : low);
    }
}
