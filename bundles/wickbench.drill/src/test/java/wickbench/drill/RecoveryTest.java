package wickbench.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.distribution.Binomial;

/**
 * Whether the limits hold the true threshold of simulated readers as often as they say.
 *
 * <p>Seeds are fixed, so the outcome is. A share that is truly 90 % leaves the bounds asked here once in a thousand sets of seeds, by
 * the binomial distribution.
 */
class RecoveryTest {
    private static final double RARE = 0.001;

    /** Readers of the kind that the drill thinks of, each thought of as often as the next: 90 in 100 are held, no more and no fewer. */
    @Test
    void holds_the_threshold_of_nine_in_ten_of_all_readers_thought_of() {
        int readers = 1200;
        Random chance = new Random(20260);
        double half = Math.log10(DrillPlan.step()) / 2;
        double low = Math.log10(DrillPlan.FAINTEST) - half;
        double high = Math.log10(DrillPlan.PLAIN) + half;
        long held = held(
                readers,
                i -> new SimulatedReader(
                        Math.pow(10, low + (high - low) * chance.nextDouble()),
                        one(DrillPlan.slopes(), chance),
                        one(DrillPlan.guesses(), chance),
                        one(DrillPlan.lapses(), chance)));
        Binomial expected = new Binomial(readers, 0.9);
        assertThat(expected.atMost(held)).as("%s of %s", held, readers).isGreaterThan(RARE / 2);
        assertThat(expected.above(held - 1)).as("%s of %s", held, readers).isGreaterThan(RARE / 2);
    }

    /** A reader is one person and no mixture: at least 90 in 100 drills of the same reader hold the threshold. */
    @ParameterizedTest
    @CsvSource({
        "0.004, 10, 0, 0",
        "0.008, 10, 0.05, 0.03",
        "0.02, 13, 0.05, 0.05",
        "0.06, 8, 0, 0.03",
        "0.1, 15, 0.1, 0"
    })
    void holds_the_threshold_of_one_reader(double threshold, double slope, double guess, double lapse) {
        int drills = 150;
        SimulatedReader reader = new SimulatedReader(threshold, slope, guess, lapse);
        long held = held(drills, i -> reader);
        assertThat(new Binomial(drills, 0.9).atMost(held))
                .as("%s of %s", held, drills)
                .isGreaterThan(RARE);
    }

    /** Limits could hold everything by being wide; these are not, and the middle lies where it should. */
    @Test
    void limits_are_narrow_and_the_middle_is_right() {
        SimulatedReader reader = new SimulatedReader(0.012, 10, 0.02, 0.02);
        List<DrillResult> results = IntStream.range(0, 120)
                .mapToObj(i -> reader.through(DrillPlan.USUAL, i).result())
                .toList();
        double bias = results.stream()
                .mapToDouble(result -> Math.log10(result.threshold() / reader.threshold()))
                .average()
                .orElseThrow();
        assertThat(Math.pow(10, Math.abs(bias))).isLessThan(1.03);
        assertThat(results)
                .filteredOn(result -> result.upper() / result.lower() <= 1.6)
                .hasSizeGreaterThan(90);
        assertThat(results).allMatch(result -> result.strips() >= 40 && result.strips() <= 96);
    }

    @Test
    void a_reader_beyond_what_is_shown_is_told_so() {
        DrillResult sharp = new SimulatedReader(0.0005, 15, 0.01, 0)
                .through(DrillPlan.USUAL, 3)
                .result();
        assertThat(sharp.cautions()).contains(DrillResult.Caution.FAINTER);
        DrillResult dull = new SimulatedReader(0.9, 15, 0.01, 0)
                .through(DrillPlan.USUAL, 3)
                .result();
        assertThat(dull.cautions()).contains(DrillResult.Caution.STRONGER, DrillResult.Caution.LAPSES);
    }

    @Test
    void who_calls_everything_is_told_so() {
        Drill drill = Drill.start(DrillPlan.USUAL, 5);
        while (!drill.over()) {
            drill = drill.answered(true);
        }
        DrillResult result = drill.result();
        assertThat(result.cautions()).contains(DrillResult.Caution.ALARMS);
        assertThat(result.alarms()).isEqualTo(result.blanks());
        assertThat(result.guess()).isGreaterThan(0.4);
    }

    private static long held(int readers, IntFunction<SimulatedReader> which) {
        return IntStream.range(0, readers)
                .filter(i -> {
                    SimulatedReader reader = which.apply(i);
                    DrillResult result = reader.through(DrillPlan.USUAL, i).result();
                    return result.lower() <= reader.threshold() && reader.threshold() <= result.upper();
                })
                .count();
    }

    private static double one(double[] of, Random chance) {
        return of[chance.nextInt(of.length)];
    }
}
