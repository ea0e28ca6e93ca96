package wickbench.figures.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class WarmthTest {

    /** Printed example 6.25 °C (read in the manual of a published library), 6.2502648 computed with R 4.2.2. */
    @Test
    void the_printed_example() {
        double kinetic = kinetic("2 2 5 8 8 8 8", 83.144);
        assertThat(kinetic).isEqualTo(6.25, within(0.005));
        assertThat(kinetic).isEqualTo(6.2502648, within(5e-8));
    }

    /** Formula of USP <1079.2>; values computed with R 4.2.2 for 83.144, 65 and 100 kJ/mol. */
    @ParameterizedTest
    @CsvSource({
        "5 5 5, 83.144, 5.0000",
        "5 5 5 15, 83.144, 8.7859",
        "5 5 5 15, 65, 8.4644",
        "5 5 5 15, 100, 9.0895",
        "2 3 4 5 6 7 8, 83.144, 5.2423",
        "2 3 4 5 6 7 8, 65, 5.1868",
        "2 3 4 5 6 7 8, 100, 5.2933",
        "20 25 30, 83.144, 25.8582",
        "15 20 25 30, 83.144, 24.1041",
        "15 40, 83.144, 33.9189"
    })
    void equal_times(String temperatures, double heat, double kinetic) {
        assertThat(kinetic(temperatures, heat)).isEqualTo(kinetic, within(0.00005));
    }

    /**
     * Unequal times after Tong and Lock, JSM Proceedings 2015:2065; values computed with R 4.2.2 (there with 8.314462618 J/mol/K, which
     * moves the last digit).
     */
    @ParameterizedTest
    @CsvSource({
        "23, 5, 1, 15, 83.144, 5.7635",
        "22, 4, 2, 25, 83.144, 9.3271",
        "22, 4, 2, 25, 65, 8.2048",
        "22, 4, 2, 25, 100, 10.4619",
        "696, 22, 24, 30, 83.144, 22.4104"
    })
    void unequal_times(double hours, double celsius, double hoursThen, double then, double heat, double kinetic) {
        List<Spell> spells = List.of(new Spell(hours, celsius), new Spell(hoursThen, then));
        assertThat(Warmth.of(spells, new Ageing(heat)).kinetic()).isEqualTo(kinetic, within(0.0001));
    }

    /** By hand; the older 273.1 K would give 8.7864, computed with R 4.2.2. */
    @Test
    void tells_mean_ends_and_hours() {
        Warmth warmth = Warmth.of(spells("5 5 5 15"), Ageing.usual());
        assertThat(warmth.mean()).isEqualTo(7.5);
        assertThat(warmth.lowest()).isEqualTo(5);
        assertThat(warmth.highest()).isEqualTo(15);
        assertThat(warmth.hours()).isEqualTo(4);
        assertThat(Warmth.hoursAbove(spells("5 5 5 15 8"), 8)).isEqualTo(1);
        assertThat(Warmth.hoursBelow(spells("1 2 5"), 2)).isEqualTo(1);
        assertThat(warmth.kinetic()).isNotCloseTo(8.7864, within(0.0001));
    }

    /** 83.144 kJ/mol over 0.0083144 kJ/mol/K are 10000 K exactly; CODATA's R differs by less than 0.0001 K in the result. */
    @Test
    void the_usual_heat_is_ten_thousand_kelvin() {
        assertThat(Ageing.usual().ratio()).isEqualTo(10_000, within(1e-9));
        double withCodata = 83.144 * 0.0083144 / 0.008314462618;
        assertThat(kinetic("5 5 5 15", withCodata)).isEqualTo(kinetic("5 5 5 15", 83.144), within(0.0001));
    }

    /** Computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({"5, 3.482246", "20, 3.081015", "25, 2.969627"})
    void ten_degrees_by_arrhenius(double celsius, double q10) {
        assertThat(Ageing.usual().q10(celsius)).isEqualTo(q10, within(5e-7));
    }

    /** ASTM F1980; the first is the commonly printed case (from memory), all computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({"25, 55, 45.625, .0005", "22, 55, 37.0590, .00005", "25, 60, 32.2617, .00005"})
    void a_year_accelerated(double reference, double celsius, double days, double printed) {
        assertThat(new TenDegrees(2).accelerated(365, reference, celsius)).isEqualTo(days, within(printed));
    }

    /** Six hours at 25 °C of a product for 5 °C, computed with R 4.2.2. */
    @Test
    void what_an_excursion_costs() {
        Spell excursion = new Spell(6, 25);
        assertThat(Ageing.usual().shelfLifeUsed(excursion, 5)).isEqualTo(66.915, within(0.0005));
        assertThat(new TenDegrees(2).shelfLifeUsed(excursion, 5)).isEqualTo(24, within(1e-12));
        assertThat(new TenDegrees(3).shelfLifeUsed(excursion, 5)).isEqualTo(54, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 5", "-1, 5", "NaN, 5", "Infinity, 5", "1, NaN", "1, 278.15", "1, -101"})
    void refuses_what_is_no_spell(double hours, double celsius) {
        assertThatThrownBy(() -> new Spell(hours, celsius)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_has_no_answer() {
        assertThatThrownBy(() -> Warmth.of(List.of(), Ageing.usual())).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Ageing(0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Ageing(Double.NaN)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new TenDegrees(.5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new TenDegrees(2).factor(5, 300)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Ageing.usual().factor(300, 5)).isInstanceOf(NoAnswer.class);
    }

    private static double kinetic(String temperatures, double heat) {
        return Warmth.of(spells(temperatures), new Ageing(heat)).kinetic();
    }

    private static List<Spell> spells(String temperatures) {
        return Arrays.stream(temperatures.split(" "))
                .map(text -> new Spell(1, Double.parseDouble(text)))
                .toList();
    }
}
