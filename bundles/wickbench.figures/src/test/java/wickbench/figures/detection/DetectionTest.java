package wickbench.figures.detection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class DetectionTest {
    private static final double SEVENTH = 5.1e-7;

    /**
     * Bliss's beetles (Ann. Appl. Biol. 22:134, 1935; Dobson, Generalized Linear Models, Tables 7.2 to 7.5, from memory), recomputed
     * with glm and dose.p of R 4.2.2 and MASS.
     */
    @ParameterizedTest
    @CsvSource({
        "LOGIT, -60.71745, 5.18070, 34.27033, 2.91213, 11.2322, 1.771721, 0.003858, 1.857639",
        "PROBIT, -34.93527, 2.64788, 19.72794, 1.48721, 10.1198, 1.770852, 0.003803, 1.854229",
        "CLOGLOG, -39.57231, 3.24029, 22.04117, 1.79936, 3.4464, 1.778753, 0.004007, 1.845161"
    })
    void bliss_beetles(
            Link link,
            double b0,
            double se0,
            double b1,
            double se1,
            double deviance,
            double ld50,
            double se,
            double ld95) {
        DetectionCurve curve = Detection.fit(beetles(), link, Dose.LINEAR, 0.95);
        assertThat(curve.coefficients()[0]).isEqualTo(b0, within(2e-5));
        assertThat(curve.coefficients()[1]).isEqualTo(b1, within(1e-5));
        // glm stops iterating earlier, which shows in the fifth place
        assertThat(curve.se()[0]).isEqualTo(se0, within(2e-4));
        assertThat(curve.se()[1]).isEqualTo(se1, within(1e-4));
        assertThat(curve.deviance()).isEqualTo(deviance, within(5.1e-5));
        assertThat(curve.df()).isEqualTo(6);
        assertThat(curve.lod50().estimate()).isEqualTo(ld50, within(SEVENTH));
        double half = curve.lod50().upper() - curve.lod50().estimate();
        assertThat(half / 1.959964).isEqualTo(se, within(SEVENTH));
        assertThat(curve.lod95().estimate()).isEqualTo(ld95, within(SEVENTH));
    }

    /** As above: expected deaths of the complementary log-log fit. */
    @Test
    void expected_deaths() {
        DetectionCurve curve = Detection.fit(beetles(), Link.CLOGLOG, Dose.LINEAR, 0.95);
        double[] expected = {5.59, 11.28, 20.95, 30.37, 47.78, 54.14, 61.11, 59.95};
        for (int i = 0; i < expected.length; i++) {
            double deaths = curve.at(beetles().levels()[i]) * beetles().tests()[i];
            assertThat(deaths).isEqualTo(expected[i], within(0.0051));
        }
        assertThat(curve.isFlagged()).isFalse();
    }

    /** Twelve digits and more: the same fits by Newton's method in 40-digit arithmetic (mpmath). */
    @ParameterizedTest
    @CsvSource({
        "LOGIT, -60.71745456163542, 34.27032573414698, 5.180711463340803, 2.91214007063573, 11.23223109741926",
        "PROBIT, -34.93525889917799, 19.72793421132233, 2.647917798617895, 1.487235040902776, 10.11975811300144",
        "CLOGLOG, -39.57231060613717, 22.04116982075754, 3.240272619672449, 1.79935519098106, 3.446438733024361"
    })
    void fits_have_ten_digits(Link link, double b0, double b1, double se0, double se1, double deviance) {
        DetectionCurve curve = Detection.fit(beetles(), link, Dose.LINEAR, 0.95);
        assertThat(curve.coefficients()[0]).isEqualTo(b0, within(Math.abs(b0) * 1e-11));
        assertThat(curve.coefficients()[1]).isEqualTo(b1, within(b1 * 1e-11));
        assertThat(curve.se()[0]).isEqualTo(se0, within(se0 * 1e-10));
        assertThat(curve.se()[1]).isEqualTo(se1, within(se1 * 1e-10));
        assertThat(curve.deviance()).isEqualTo(deviance, within(deviance * 1e-11));
    }

    /** Dilution levels of the worked example of CLSI EP17-A2, lot 1 (read in the data of the sherloq package); R 4.2.2. */
    @Test
    void one_hit_of_the_dilution_levels() {
        DetectionCurve curve = Detection.fit(dilutions("1"), Link.ONE_HIT, Dose.LN, 0.95);
        assertThat(curve.coefficients()).hasSize(1);
        assertThat(curve.coefficients()[0]).isEqualTo(3.960424, within(SEVENTH));
        assertThat(curve.se()[0]).isEqualTo(0.127779, within(1e-6));
        assertThat(curve.lod50().estimate()).isEqualTo(0.0132079, within(5.1e-8));
        assertThat(curve.lod50().lower()).isEqualTo(0.0102818, within(5.1e-8));
        assertThat(curve.lod50().upper()).isEqualTo(0.0169668, within(5.1e-8));
        assertThat(curve.lod95().estimate()).isEqualTo(0.0570838, within(5.1e-8));
        assertThat(curve.deviance()).isEqualTo(1.62625, within(5.1e-6));
        assertThat(curve.df()).isEqualTo(6);
        assertThat(curve.lod95().estimate() / curve.lod50().estimate()).isEqualTo(4.32192809, within(5e-9));
    }

    /** As above. */
    @Test
    void free_slope_of_the_dilution_levels() {
        DetectionCurve curve = Detection.fit(dilutions("1"), Link.CLOGLOG, Dose.LN, 0.95);
        assertThat(curve.coefficients()[0]).isEqualTo(3.380257, within(3e-6));
        assertThat(curve.se()[0]).isEqualTo(0.579397, within(1e-5));
        assertThat(curve.coefficients()[1]).isEqualTo(0.846225, within(2e-6));
        assertThat(curve.se()[1]).isEqualTo(0.151158, within(5e-6));
        assertThat(curve.lod50().estimate()).isEqualTo(0.0119428, within(5.1e-8));
        assertThat(curve.lod95().estimate()).isEqualTo(0.0673437, within(5.1e-8));
        assertThat(curve.deviance()).isEqualTo(0.74349, within(5.1e-6));
        assertThat(curve.df()).isEqualTo(5);
    }

    /** Lot 1 against lot 2 as two methods; R 4.2.2. */
    @Test
    void relative_limit_of_two_lots() {
        RelativeLimit limit = RelativeLimit.of(dilutions("1"), dilutions("2"), Link.ONE_HIT, Dose.LN, 0.95);
        double ratio = limit.ratio().estimate();
        RelativeLimit other = RelativeLimit.of(dilutions("2"), dilutions("1"), Link.ONE_HIT, Dose.LN, 0.95);
        RelativeLimit above = ratio > 1 ? limit : other;
        assertThat(above.ratio().estimate()).isEqualTo(1.723038, within(SEVENTH));
        assertThat(above.ratio().lower()).isEqualTo(1.202005, within(2e-6));
        assertThat(above.ratio().upper()).isEqualTo(2.469923, within(4e-6));
        assertThat(above.z()).isEqualTo(2.9614, within(5.1e-5));
        assertThat(limit.ratio().estimate() * other.ratio().estimate()).isEqualTo(1, within(1e-12));
    }

    /** Five levels, synthetic; R 4.2.2. */
    @Test
    void five_levels() {
        Levels study =
                new Levels(new double[] {0, 0.35, 0.7, 1.4, 3, 6}, new long[] {5, 20, 20, 20, 20, 5}, new long[] {
                    0, 6, 10, 15, 19, 5
                });
        DetectionCurve curve = Detection.fit(study, Link.ONE_HIT, Dose.LN, 0.95);
        assertThat(curve.coefficients()[0]).isEqualTo(-0.00128725, within(5.1e-9));
        assertThat(curve.se()[0]).isEqualTo(0.161748, within(1e-6));
        assertThat(curve.lod50().estimate()).isEqualTo(0.694040, within(SEVENTH));
        assertThat(curve.lod50().lower()).isEqualTo(0.505480, within(1e-6));
        assertThat(curve.lod50().upper()).isEqualTo(0.952938, within(1e-6));
        assertThat(curve.lod95().estimate()).isEqualTo(2.999591, within(SEVENTH));
        assertThat(curve.deviance()).isEqualTo(0.029056, within(SEVENTH));
        assertThat(curve.df()).isEqualTo(4);
        assertThat(Detection.fit(study, Link.CLOGLOG, Dose.LN, 0.95).coefficients()[1])
                .isEqualTo(1.000045, within(SEVENTH));
    }

    /** CLSI EP17-A2 probit example: 0.0561 on linear dose and 0.0767 on log10 dose are read; the digits behind them R 4.2.2. */
    @Test
    void probit_of_the_dilution_levels() {
        DetectionCurve linear = Detection.fit(dilutions("1"), Link.PROBIT, Dose.LINEAR, 0.95);
        assertThat(linear.coefficients()[0]).isEqualTo(-0.517305, within(SEVENTH));
        assertThat(linear.coefficients()[1]).isEqualTo(38.59557, within(5.1e-6));
        assertThat(linear.lod95().estimate()).isEqualTo(0.056021, within(SEVENTH));
        DetectionCurve log = Detection.fit(dilutions("1"), Link.PROBIT, Dose.LOG10, 0.95);
        assertThat(log.coefficients()[0]).isEqualTo(3.847962, within(SEVENTH));
        assertThat(log.coefficients()[1]).isEqualTo(1.974981, within(SEVENTH));
        assertThat(log.lod95().estimate()).isEqualTo(0.0766464, within(5.1e-8));
    }

    /** The budworm data of Venables and Ripley, MASS 4th ed. 7.2 (from memory; Collett 1991), recomputed in R 4.2.2. */
    @Test
    void budworm_with_one_slope_for_both_sexes() {
        NamedTable table = NamedTable.of("budworm.csv");
        double[] dose = table.numbers("ldose");
        double[][] design = new double[dose.length][];
        for (int i = 0; i < dose.length; i++) {
            double male = table.rows().get(i).get(table.header().indexOf("sex")).equals("M") ? 1 : 0;
            design[i] = new double[] {1 - male, male, dose[i]};
        }
        Regression.Fit fit = new Regression(
                        Link.LOGIT, design, new double[dose.length], table.counts("n"), table.counts("numdead"))
                .fit();
        assertThat(fit.coefficients()[0]).isEqualTo(-3.473155, within(SEVENTH));
        assertThat(fit.se(0)).isEqualTo(0.468520, within(2e-6));
        assertThat(fit.coefficients()[1]).isEqualTo(-2.372412, within(SEVENTH));
        assertThat(fit.se(1)).isEqualTo(0.385511, within(2e-6));
        assertThat(fit.coefficients()[2]).isEqualTo(1.064214, within(SEVENTH));
        assertThat(fit.se(2)).isEqualTo(0.131077, within(2e-6));
        assertThat(fit.deviance()).isEqualTo(6.75706, within(5.1e-6));
        double[][] females = {{.25, 2.231265, 0.249909}, {.5, 3.263587, 0.229754}, {.75, 4.295910, 0.274687}};
        for (double[] each : females) {
            Reach reach = Reach.of(fit, 0, 2, Link.LOGIT.eta(each[0]));
            assertThat(reach.x()).isEqualTo(each[1], within(SEVENTH));
            assertThat(reach.se()).isEqualTo(each[2], within(1e-6));
        }
        Reach males = Reach.of(fit, 1, 2, 0);
        assertThat(males.x()).isEqualTo(2.229262, within(SEVENTH));
        assertThat(males.se()).isEqualTo(0.225965, within(1e-6));
    }

    @ParameterizedTest
    @EnumSource(Link.class)
    void what_fixes_no_curve_is_refused_with_the_reason(Link link) {
        double[] levels = {1, 2, 4};
        long[] tests = {10, 10, 10};
        refused(link, levels, tests, new long[] {0, 0, 0}, "detection.none-positive");
        refused(link, levels, tests, new long[] {10, 10, 10}, "detection.all-positive");
        refused(link, levels, new long[] {10, 0, 10}, new long[] {1, 0, 9}, "size.expected");
        refused(link, levels, tests, new long[] {1, 11, 9}, "part.above-total");
        refused(link, new double[] {0, 0, 0}, tests, new long[] {1, 2, 3}, "detection.only-blanks");
        refused(link, new double[] {1, Double.NaN, 3}, tests, new long[] {1, 2, 3}, "number.expected");
        refused(link, new double[] {-1, 1, 3}, tests, new long[] {1, 2, 3}, "detection.level-below-zero");
        if (link != Link.ONE_HIT) {
            refused(link, levels, tests, new long[] {0, 0, 10}, "detection.separated");
            refused(link, levels, tests, new long[] {0, 5, 10}, "detection.separated");
            refused(link, levels, tests, new long[] {10, 4, 0}, "detection.separated");
            refused(link, levels, tests, new long[] {9, 5, 1}, "detection.falls");
            refused(link, new double[] {2, 2, 2}, tests, new long[] {3, 5, 1}, "detection.one-level");
        }
    }

    private static void refused(Link link, double[] levels, long[] tests, long[] positives, String code) {
        assertThatThrownBy(() -> Detection.fit(new Levels(levels, tests, positives), link, Dose.LN, 0.95))
                .isInstanceOfSatisfying(NoAnswer.class, none -> {
                    assertThat(none.code()).isEqualTo(code);
                    assertThat(none.text()).isNotBlank();
                });
    }

    private static Levels beetles() {
        NamedTable table = NamedTable.of("bliss_beetles.csv");
        return new Levels(table.numbers("log10dose"), table.counts("n"), table.counts("killed"));
    }

    private static Levels dilutions(String lot) {
        NamedTable table = NamedTable.of("ep17_probit.csv").where("Lot", lot);
        return new Levels(table.numbers("Conc"), table.counts("Tot"), table.counts("Pos"));
    }
}
