package wickbench.figures.agreement;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Normal;

/**
 * Agreement of many readers beyond chance (Fleiss, Psychol. Bull. 76:378, 1971).
 *
 * @param observed mean share of agreeing pairs, P̄
 * @param expected share expected by chance, Σp²
 * @param kappa fixed-marginal kappa (P̄ − P̄e)/(1 − P̄e)
 * @param se0 its standard error where there is no agreement beyond chance (Fleiss, Nee and Landis, Psychol. Bull. 86:974, 1979)
 * @param z kappa/se0
 * @param p two-sided p-value of z
 * @param categories each category against the rest
 * @param freeMarginal (P̄ − 1/k)/(1 − 1/k) (Brennan and Prediger, Educ. Psychol. Meas. 41:687, 1981)
 * @param ac1 Gwet's AC1
 */
public record ManyReaders(
        double observed,
        double expected,
        double kappa,
        double se0,
        double z,
        double p,
        List<Category> categories,
        double freeMarginal,
        double ac1) {

    /**
     * @param share of all answers
     * @param kappa agreement on this category; absent where nobody gave it
     */
    public record Category(double share, OptionalDouble kappa) {}

    /**
     * @param counts a row a subject, a column a category: how many readers gave that answer; the same number of readers, at least
     *     two, for each subject
     */
    public static ManyReaders of(long[][] counts) {
        long readers = checked(counts);
        int categories = counts[0].length;
        double subjects = counts.length;
        double[] share = IntStream.range(0, categories)
                .mapToDouble(j -> Arrays.stream(counts).mapToLong(row -> row[j]).sum() / (subjects * readers))
                .toArray();
        double pairs = readers * (readers - 1d);
        double observed = Arrays.stream(counts)
                        .mapToDouble(row -> Arrays.stream(row)
                                        .mapToDouble(c -> c * (c - 1d))
                                        .sum()
                                / pairs)
                        .sum()
                / subjects;
        double expected = Arrays.stream(share).map(s -> s * s).sum();
        if (Arrays.stream(share).anyMatch(s -> s == 1)) {
            throw NoAnswer.of("", "agreement.one-category");
        }
        double spread = Arrays.stream(share).map(s -> s * (1 - s)).sum();
        double skew = Arrays.stream(share).map(s -> s * (1 - s) * (1 - 2 * s)).sum();
        double se0 = Math.sqrt(2 * (spread * spread - skew) / (subjects * pairs)) / spread;
        double kappa = (observed - expected) / (1 - expected);
        double chance = spread / (categories - 1);
        return new ManyReaders(
                observed,
                expected,
                kappa,
                se0,
                kappa / se0,
                Math.min(1, 2 * Normal.above(Math.abs(kappa / se0))),
                IntStream.range(0, categories)
                        .mapToObj(j -> category(counts, j, share[j], subjects * pairs))
                        .toList(),
                (observed - 1d / categories) / (1 - 1d / categories),
                (observed - chance) / (1 - chance));
    }

    private static Category category(long[][] counts, int j, double share, double allPairs) {
        if (share == 0) {
            return new Category(0, OptionalDouble.empty());
        }
        double readers = Arrays.stream(counts[0]).sum();
        double apart = Arrays.stream(counts)
                .mapToDouble(row -> row[j] * (readers - row[j]))
                .sum();
        return new Category(share, OptionalDouble.of(1 - apart / (allPairs * share * (1 - share))));
    }

    private static long checked(long[][] counts) {
        if (counts.length == 0 || counts[0].length < 2) {
            throw NoAnswer.of("", "agreement.two-categories", counts.length == 0 ? 0 : counts[0].length);
        }
        long readers = Arrays.stream(counts[0]).sum();
        for (int i = 0; i < counts.length; i++) {
            for (long each : counts[i]) {
                if (each < 0) {
                    throw NoAnswer.of("count", "count.expected", Inputs.LARGEST_COUNT, each)
                            .inRow(i);
                }
            }
            long here = Arrays.stream(counts[i]).sum();
            if (counts[i].length != counts[0].length || here != readers || readers < 2) {
                throw NoAnswer.of("", "agreement.readers", here, readers).inRow(i);
            }
        }
        return readers;
    }
}
