package wickbench.stock.gs1;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** GS1 General Specifications §7.12: the century of a two-digit year. */
class ShortDateTest {

    @ParameterizedTest
    @CsvSource({
        "1998, 2000, 2025, 1949, 1950, 1951, 1975, 1976, 1977, 1999",
        "2025, 2000, 2025, 2049, 2050, 2051, 2075, 1976, 1977, 1999",
        "2026, 2000, 2025, 2049, 2050, 2051, 2075, 2076, 1977, 1999",
        "2049, 2000, 2025, 2049, 2050, 2051, 2075, 2076, 2077, 2099",
        "2050, 2100, 2025, 2049, 2050, 2051, 2075, 2076, 2077, 2099",
        "2099, 2100, 2125, 2149, 2050, 2051, 2075, 2076, 2077, 2099"
    })
    void the_table(int now, int y00, int y25, int y49, int y50, int y51, int y75, int y76, int y77, int y99) {
        assertThat(java.util.List.of(0, 25, 49, 50, 51, 75, 76, 77, 99))
                .extracting(two -> ShortDate.year(two, now))
                .containsExactly(y00, y25, y49, y50, y51, y75, y76, y77, y99);
    }

    @Property
    void the_year_is_never_farther_than_half_a_century(
            @ForAll @IntRange(max = 99) int two, @ForAll @IntRange(min = 1951, max = 2149) int now) {
        assertThat(ShortDate.year(two, now)).isBetween(now - 49, now + 50);
        assertThat(ShortDate.year(two, now) % 100).isEqualTo(two);
    }

    @Test
    void day_00_is_the_last_of_the_month() {
        assertThat(ShortDate.read("280200", 2026)).contains(LocalDate.of(2028, 2, 29));
        assertThat(ShortDate.read("270200", 2026)).contains(LocalDate.of(2027, 2, 28));
        assertThat(ShortDate.read("271231", 2026)).contains(LocalDate.of(2027, 12, 31));
    }

    @ParameterizedTest
    @CsvSource({"270229", "271301", "270001", "270432", "27010", "2701011", "a70101"})
    void what_is_no_date_is_none(String digits) {
        assertThat(ShortDate.read(digits, 2026)).isEmpty();
    }
}
