package wickbench.api.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {
    private final Locale before = Locale.getDefault();

    @AfterEach
    void giveBack() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"en;2.50;2.5", "es;2,50;2,5", "es-ES;2,50;2,5", "es-MX;2.50;2.5", "en-GB;2.50;2.5"})
    void have_the_sign_of_the_language(String tag, String exact, String rounded) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Decimals.of(new BigDecimal("2.50"))).isEqualTo(exact);
        assertThat(Decimals.of(2.45, 1)).isEqualTo(rounded);
    }

    @Test
    void are_written_without_exponent_or_groups() {
        Locale.setDefault(Locale.forLanguageTag("es"));
        assertThat(Decimals.of(new BigDecimal("1.5E+6"))).isEqualTo("1500000");
        assertThat(Decimals.of(-0.04, 1)).isEqualTo("0,0");
        assertThat(Decimals.of(Double.NaN, 1)).isEqualTo("NaN");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"en;11,719;-1,000;999", "es;11.719;-1.000;999"})
    void whole_ones_stand_in_groups_where_people_count(String tag, String many, String less, String few) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Decimals.grouped(11_719)).isEqualTo(many);
        assertThat(Decimals.grouped(-1_000)).isEqualTo(less);
        assertThat(Decimals.grouped(999)).isEqualTo(few);
    }

    @Test
    void stand_in_fields_with_the_sign_where_they_are_alone() {
        Locale.setDefault(Locale.forLanguageTag("es"));
        assertThat(Decimals.shown("0.05")).isEqualTo("0,05");
        for (String other : new String[] {"5", "0.5, 1.5", "1.2.3", "p. 7", ""}) {
            assertThat(Decimals.shown(other)).isEqualTo(other);
        }
    }

    @Test
    void go_into_files_with_a_point() {
        Locale.setDefault(Locale.forLanguageTag("es"));
        assertThat(Decimals.pointed("-2,5")).isEqualTo("-2.5");
        for (String other : new String[] {"7", "2,5 mg/kg", "1,2,3", "2026-11-29", "L1,", "10:30", ""}) {
            assertThat(Decimals.pointed(other)).isEqualTo(other);
        }
        Locale.setDefault(Locale.ENGLISH);
        assertThat(Decimals.pointed("2,5")).isEqualTo("2,5");
    }
}
