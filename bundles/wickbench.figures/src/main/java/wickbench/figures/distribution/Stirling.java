package wickbench.figures.distribution;

/**
 * What Stirling's formula leaves over: ln z! − (z + ½) ln z + z − ½ ln 2π (Loader, Fast and accurate computation of binomial
 * probabilities, 2000).
 */
final class Stirling {
    /** For z = ½, 1, 1½ … 15, to 17 digits. */
    private static final double[] HALVES = {
        0.15342640972002735,
        0.081061466795327258,
        0.054814121051917654,
        0.041340695955409294,
        0.033162873519936287,
        0.027677925684998339,
        0.023746163656297496,
        0.020790672103765093,
        0.018488450532673185,
        0.016644691189821192,
        0.015134973221917379,
        0.013876128823070748,
        0.012810465242920227,
        0.01189670994589177,
        0.011104559758206917,
        0.010411265261972096,
        0.0097994161261588033,
        0.0092554621827127329,
        0.0087687001341393855,
        0.0083305634333628713,
        0.0079341145643140205,
        0.0075736754879518408,
        0.0072445543013203832,
        0.0069428401072095299,
        0.0066652470327076824,
        0.0064089941880042071,
        0.0061717122630394576,
        0.0059513701127588477,
        0.0057462165130101157,
        0.0055547335519628014
    };

    private static final double[] SERIES = {
        1 / 12d, -1 / 360d, 1 / 1260d, -1 / 1680d, 1 / 1188d, -691 / 360360d, 1 / 156d
    };

    private Stirling() {}

    /**
     * Returns the rest.
     *
     * @param z a multiple of ½ up to 15, or any number above 15
     */
    static double rest(double z) {
        if (z <= HALVES.length / 2d) {
            return HALVES[(int) Math.round(2 * z) - 1];
        }
        double square = 1 / (z * z);
        double sum = 0;
        for (int i = SERIES.length - 1; i >= 0; i--) {
            sum = sum * square + SERIES[i];
        }
        return sum / z;
    }
}
