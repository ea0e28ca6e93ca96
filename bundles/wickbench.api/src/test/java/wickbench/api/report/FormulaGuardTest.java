package wickbench.api.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** CWE-1236; the characters are those of OWASP, "CSV Injection". */
class FormulaGuardTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1+1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =1",
                "\u00A0=1",
                "\uFEFF=1",
                "\u200E=1",
                "\uFF1D1+1",
                "=cmd|' /C calc'!A0",
                "=HYPERLINK(\"x\",\"y\")",
                "-",
                "--5",
                "-5-3",
                "-05"
            })
    void what_a_spreadsheet_might_compute_becomes_text(String cell) {
        assertThat(FormulaGuard.guarded(cell)).isEqualTo("'" + cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Line 4", "a=b", "-5", "-5.25", "0", "12.5", "µg/100 cm²", "5-3", " x", "≥ 10"})
    void what_is_harmless_stays(String cell) {
        assertThat(FormulaGuard.guarded(cell)).isEqualTo(cell);
    }

    @Property
    void what_went_out_comes_back(@ForAll String cell) {
        assertThat(FormulaGuard.original(FormulaGuard.guarded(cell))).isEqualTo(cell);
    }

    @Property
    void nothing_leaves_with_a_formula_in_front(
            @ForAll @Chars({'=', '+', '-', '@', '\t', '\r', '\n', ' ', '\'', '.', '"'}) @CharRange(from = '0', to = '3')
                    String cell) {
        String out = FormulaGuard.guarded(cell);
        assertThat(out.isEmpty() || out.charAt(0) == '\'' || harmless(out))
                .as(out)
                .isTrue();
    }

    @Property
    void a_number_is_written_again_as_it_was(@ForAll BigDecimal number) {
        String cell = number.toPlainString();
        FormulaGuard.number(cell)
                .ifPresent(kept -> assertThat(new BigDecimal(Double.toString(kept.doubleValue()))
                                .stripTrailingZeros()
                                .toPlainString())
                        .isEqualTo(cell));
    }

    @Test
    void what_a_spreadsheet_would_write_differently_is_no_number() {
        assertThat(FormulaGuard.number("0.50")).isEmpty();
        assertThat(FormulaGuard.number("007")).isEmpty();
        assertThat(FormulaGuard.number("-0")).isEmpty();
        assertThat(FormulaGuard.number("1234567890123456")).isEmpty();
        assertThat(FormulaGuard.number("-12.5")).contains(new BigDecimal("-12.5"));
    }

    private static boolean harmless(String out) {
        String front = out.strip();
        boolean number = out.matches("-?\\d+(\\.\\d+)?");
        return number
                || front.isEmpty() && "\t\r\n".indexOf(out.charAt(0)) < 0
                || !front.isEmpty() && "=+-@".indexOf(front.charAt(0)) < 0;
    }
}
