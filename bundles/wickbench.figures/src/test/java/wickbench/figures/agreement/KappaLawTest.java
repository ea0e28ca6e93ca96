package wickbench.figures.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;

class KappaLawTest {
    private static final Offset<Double> ROUNDING = Offset.offset(1e-12);

    @Property(tries = 300)
    void kappa_is_at_most_one_and_one_only_without_a_difference(
            @ForAll @Size(9) List<@IntRange(max = 40) Integer> cells, @ForAll boolean linear) {
        long[][] counts = table(cells);
        Kappa kappa = TwoReaders.of(counts).kappa(linear ? Weights.linear(3) : Weights.none(3), 0.95);
        assertThat(kappa.kappa().estimate()).isLessThanOrEqualTo(1 + 1e-12);
        assertThat(kappa.kappa().lower()).isLessThanOrEqualTo(kappa.kappa().estimate());
        assertThat(kappa.ac1()).isLessThanOrEqualTo(1 + 1e-12);
        assertThat(kappa.observed()).isBetween(0.0, 1 + 1e-12);
    }

    @Property(tries = 300)
    void swapping_the_readers_changes_nothing(@ForAll @Size(9) List<@IntRange(max = 40) Integer> cells) {
        long[][] counts = table(cells);
        long[][] swapped = new long[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                swapped[j][i] = counts[i][j];
            }
        }
        Kappa one = TwoReaders.of(counts).kappa(Weights.quadratic(3), 0.95);
        Kappa other = TwoReaders.of(swapped).kappa(Weights.quadratic(3), 0.95);
        assertThat(one.kappa().estimate()).isCloseTo(other.kappa().estimate(), ROUNDING);
        assertThat(one.fleissSe()).isCloseTo(other.fleissSe(), ROUNDING);
    }

    /** Nine counts, of which the first two of the diagonal are at least 1 so that there is more than one answer. */
    private static long[][] table(List<Integer> cells) {
        long[][] counts = new long[3][3];
        for (int i = 0; i < 9; i++) {
            counts[i / 3][i % 3] = cells.get(i) + (i == 0 || i == 4 ? 1 : 0);
        }
        return counts;
    }
}
