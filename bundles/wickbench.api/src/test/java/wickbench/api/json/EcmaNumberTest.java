package wickbench.api.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the numbers of RFC 8785 appendix B. */
class EcmaNumberTest {
    private static final int MOST_DIGITS = 17;

    static List<String[]> published() throws IOException {
        try (InputStream file = EcmaNumberTest.class.getResourceAsStream("jcs-numbers.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("[0-9a-f]{16},.*"))
                    .map(line -> line.split(","))
                    .toList();
        }
    }

    @Test
    void the_published_numbers_were_found() throws IOException {
        assertThat(published()).hasSizeGreaterThan(25);
    }

    @ParameterizedTest
    @MethodSource("published")
    void a_double_is_written_as_published(String bits, String text) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        if (text.startsWith("ERROR")) {
            assertThatThrownBy(() -> new BigDecimal(value)).isInstanceOf(NumberFormatException.class);
        } else {
            assertThat(EcmaNumber.text(shortest(value))).isEqualTo(text);
        }
    }

    /** Quantities as a plant writes them; from memory of ECMA-262. */
    @ParameterizedTest
    @CsvSource({"7.250,7.25", "-0.0,0", "100,100", "1E+2,100", "0.00,0", "2.5E-7,2.5e-7", "1E+21,1e+21", "-1.50,-1.5"})
    void trailing_zeros_and_the_sign_of_nothing_carry_no_meaning(String decimal, String text) {
        assertThat(new Json.Num(new BigDecimal(decimal)).canonical()).isEqualTo(text);
    }

    /** The fewest digits that give the double back, and of those the closest: what ECMAScript asks for. */
    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    }
}
