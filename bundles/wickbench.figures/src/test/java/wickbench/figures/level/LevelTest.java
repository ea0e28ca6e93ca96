package wickbench.figures.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class LevelTest {

    /** FAO/WHO consultation: level = dose ÷ amount; the table is computed. */
    @ParameterizedTest
    @CsvSource({
        "30, 33.33, 66.67, 100, 166.67, 333.33, 6666.67",
        "50, 20, 40, 60, 100, 200, 4000",
        "100, 10, 20, 30, 50, 100, 2000",
        "250, 4, 8, 12, 20, 40, 800",
        "400, 2.5, 5, 7.5, 12.5, 25, 500"
    })
    void levels_by_dose_and_amount(
            String amount, String one, String two, String three, String five, String ten, String most) {
        List<String> doses = List.of("1", "2", "3", "5", "10", "200");
        List<String> levels = List.of(one, two, three, five, ten, most);
        for (int i = 0; i < doses.size(); i++) {
            assertThat(ActionLevel.of(number(doses.get(i)), number(amount)).rounded(2))
                    .isEqualByComparingTo(levels.get(i));
        }
    }

    /** Belgian FASFC, opinion 24-2017 (read in a secondary page): mg/kg for 25 g and 400 g, one decimal, half up. */
    @ParameterizedTest
    @CsvSource({
        "peanut, 44, 2.8",
        "milk, 48, 3",
        "egg, 12.4, 0.8",
        "hazelnut, 20, 1.3",
        "cashew, 24, 1.5",
        "soy, 116, 7.3",
        "wheat, 52, 3.3",
        "mustard, 4, 0.3",
        "lupin, 180, 11.3",
        "sesame, 16, 1",
        "crustacea, 484, 30.3"
    })
    void belgian_table(String allergen, String small, String large) {
        BigDecimal dose = ReferenceDose.belgianOpinion().stream()
                .filter(each -> each.allergen().equals(allergen))
                .findFirst()
                .flatMap(ReferenceDose::mg)
                .orElseThrow();
        assertThat(ActionLevel.of(dose, number("25")).rounded(1)).isEqualByComparingTo(small);
        assertThat(ActionLevel.of(dose, number("400")).rounded(1)).isEqualByComparingTo(large);
    }

    /** The doses as listed with how each is known. */
    @Test
    void doses_of_the_consultation() {
        List<List<String>> rows = NamedTable.of("rfd.csv").rows();
        List<ReferenceDose> doses = ReferenceDose.consultation();
        assertThat(doses).hasSameSizeAs(rows);
        for (int i = 0; i < doses.size(); i++) {
            List<String> row = rows.get(i);
            ReferenceDose dose = doses.get(i);
            assertThat(dose.name().toLowerCase().charAt(0))
                    .isEqualTo(row.get(0).toLowerCase().charAt(0));
            assertThat(dose.mg().map(BigDecimal::toPlainString).orElse("none recommended"))
                    .isEqualTo(row.get(1));
            assertThat(row.get(2)).contains(dose.publication().code().substring("fao-who-".length()));
            assertThat(row.get(3)).startsWith(dose.known() == ReferenceDose.Known.READ ? "S" : "M");
        }
    }

    @Test
    void a_result_stands_below_above_or_cannot_tell() {
        ActionLevel ten = new ActionLevel(number("10"));
        assertThat(Standing.of(Found.notDetected(number("5")), ten)).isEqualTo(Standing.BELOW);
        assertThat(Standing.of(Found.notDetected(number("10")), ten)).isEqualTo(Standing.BELOW);
        assertThat(Standing.of(Found.notDetected(number("10.1")), ten)).isEqualTo(Standing.CANNOT_TELL);
        assertThat(Standing.of(Found.detected(number("10")), ten)).isEqualTo(Standing.AT_OR_ABOVE);
        assertThat(Standing.of(Found.detected(number("2")), ten)).isEqualTo(Standing.CANNOT_TELL);
        assertThat(Standing.of(new Found.InRange(number("2"), Optional.of(number("9"))), ten))
                .isEqualTo(Standing.BELOW);
        assertThat(Standing.of(new Found.NotOfFood(), ten)).isEqualTo(Standing.NOT_COMPARABLE);
        assertThatThrownBy(() -> new Found.InRange(number("3"), Optional.of(number("3"))))
                .isInstanceOf(NoAnswer.class);
    }

    /** Common practice, no source; computed. */
    @ParameterizedTest
    @CsvSource({
        "2, 5, 1, 200, 0.005",
        "2, 5, 1, 5, 0.2",
        "5, 12, .5, 1000, 0.012",
        "5, 12, .5, 20, 0.6",
        "10, 3, 1, 300, 0.01"
    })
    void carry_over_of_a_swab(String found, String area, String recovery, String mass, String expected) {
        CarryOver.Surface surface = new CarryOver.Surface(number(area), number(recovery), BigDecimal.ONE);
        CarryOver carried =
                CarryOver.ofSwab(number(found), surface, new CarryOver.Masses(number("1000"), number(mass)));
        assertThat(carried.firstOff()).isEqualByComparingTo(expected);
        assertThat(CarryOver.swabLimit(new ActionLevel(carried.firstOff()), surface, number(mass)))
                .isEqualByComparingTo(found);
    }

    /** Common practice, no source; computed. */
    @Test
    void limits_on_the_surface_and_in_the_rinse() {
        CarryOver.Surface surface = new CarryOver.Surface(number("3"), number("0.8"), BigDecimal.ONE);
        ActionLevel four = new ActionLevel(number("4"));
        assertThat(CarryOver.swabLimit(four, surface, number("300"))).isEqualByComparingTo("3200");
        assertThat(CarryOver.swabLimit(four, surface, number("10")).setScale(3, RoundingMode.HALF_UP))
                .isEqualByComparingTo("106.667");
        CarryOver rinse =
                CarryOver.ofRinse(number("0.5"), number("3"), new CarryOver.Masses(number("500"), number("500")));
        assertThat(rinse.batch()).isEqualByComparingTo("0.003");
        assertThat(CarryOver.rinseLimit(new ActionLevel(number("0.003")), number("3"), number("500")))
                .isEqualByComparingTo("0.5");
    }

    /** Common practice, no source; computed. */
    @Test
    void dilution_and_protein() {
        assertThat(Conversions.inSample(number("0.1"), number("1"), number("10"), number("5")))
                .isEqualByComparingTo("5.0");
        BigDecimal peanut = Conversions.foodOf(number("40"), number("25.8"));
        assertThat(peanut.setScale(1, RoundingMode.HALF_UP)).isEqualByComparingTo("155.0");
        assertThat(Conversions.proteinOf(number("155"), number("25.8"))).isEqualByComparingTo("39.99");
    }

    @Test
    void impossible_quantities_are_refused() {
        assertThatThrownBy(() -> ActionLevel.of(BigDecimal.ZERO, BigDecimal.ONE))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ActionLevel.of(BigDecimal.ONE, number("-1"))).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new CarryOver.Surface(BigDecimal.ONE, number("1.2"), BigDecimal.ONE))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new CarryOver.Masses(BigDecimal.ONE, BigDecimal.TEN))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Conversions.foodOf(BigDecimal.ONE, number("101")))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Conversions.inSample(BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ONE, BigDecimal.ZERO))
                .isInstanceOf(NoAnswer.class);
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }
}
