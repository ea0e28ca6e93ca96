package wickbench.stock.gs1;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckDigitTest {

    @Test
    void the_standards_worked_example_gives_nine() {
        // GS1 General Specifications §7.9, table 7-9: the sum is 101
        assertThat(CheckDigit.of("37610425002123456")).isEqualTo(9);
    }

    @ParameterizedTest
    @CsvSource({
        // recomputed by the rule of §7.9
        "629104150021, 3",
        "0061414112345, 2",
        "0061414199999, 6",
        "9521141123456, 6",
        "4017072, 5",
        "061414100003, 6",
        "952114100000, 7",
        "0952012345678, 8"
    })
    void further_numbers(String data, int digit) {
        assertThat(CheckDigit.of(data)).isEqualTo(digit);
        assertThat(CheckDigit.right(data + digit)).isTrue();
    }

    @Property
    void one_wrong_digit_is_always_found(
            @ForAll @NumericChars @StringLength(value = 13) String data,
            @ForAll @IntRange(max = 13) int place,
            @ForAll @IntRange(min = 1, max = 9) int more) {
        String number = data + CheckDigit.of(data);
        char other = (char) ('0' + (number.charAt(place) - '0' + more) % 10);
        assertThat(CheckDigit.right(number.substring(0, place) + other + number.substring(place + 1)))
                .isFalse();
    }

    @Test
    void other_characters_are_refused() {
        assertThatThrownBy(() -> CheckDigit.of("12a")).hasMessageContaining("12a");
        assertThat(CheckDigit.right("")).isFalse();
    }
}
