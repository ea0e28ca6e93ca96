package wickbench.report.chart;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Colours that people with the common colour vision deficiencies tell apart.
 *
 * <p>Okabe and Ito, "Color Universal Design" (2008). The order is ours: the farthest apart come first.
 */
enum OkabeIto {
    BLUE(0x0072B2),
    VERMILLION(0xD55E00),
    BLUISH_GREEN(0x009E73),
    ORANGE(0xE69F00),
    SKY_BLUE(0x56B4E9),
    REDDISH_PURPLE(0xCC79A7),
    YELLOW(0xF0E442),
    BLACK(0x000000);

    private final Color color;

    OkabeIto(int rgb) {
        color = new Color(rgb);
    }

    Color color() {
        return color;
    }

    /**
     * Returns those that stand out enough on a ground to be seen as marks.
     *
     * <p>Where blue does not, sky blue takes its place, so that a series keeps its hue in light and dark.
     */
    static List<Color> on(Color ground) {
        boolean blue = BLUE.standsOutOn(ground);
        Stream<OkabeIto> first = Stream.of(blue ? BLUE : SKY_BLUE);
        return Stream.concat(first, Arrays.stream(values()))
                .distinct()
                .filter(one -> one.standsOutOn(ground))
                .map(OkabeIto::color)
                .toList();
    }

    private boolean standsOutOn(Color ground) {
        return Contrast.ratio(color, ground) >= Contrast.OF_MARKS;
    }
}
