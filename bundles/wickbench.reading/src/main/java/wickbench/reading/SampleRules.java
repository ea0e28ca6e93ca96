package wickbench.reading;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Unit;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Visual;

/** Whether the sample could be tested as it was. */
final class SampleRules {
    private SampleRules() {}

    static Stream<Finding> preChecks(Case test) {
        return test.method().preChecks().stream()
                .flatMap(check ->
                        preCheck(
                                check,
                                Optional.ofNullable(test.reading().preChecks().get(check.name())))
                                .stream());
    }

    static Stream<Finding> visiblySoiled(Case test) {
        return test.reading().sample().visual().filter(Visual.SOILED::equals).stream()
                .map(visual -> Rule.caution("sample.visibly-soiled", "soiled", "clean"));
    }

    private static Optional<Finding> preCheck(PreCheck check, Optional<BigDecimal> measured) {
        String rule = "sample.pre-check";
        Range range = check.range();
        String asked = check.name() + " " + Decimals.text(range.low()) + " to " + value(range.high(), range.unit());
        if (measured.isEmpty()) {
            return Optional.of(Rule.caution(rule, Rule.NOT_STATED, asked));
        }
        return measured.filter(value -> outside(value, range))
                .map(value -> Rule.bars(rule, check.name() + " " + value(value, range.unit()), asked));
    }

    private static boolean outside(BigDecimal value, Range range) {
        return value.compareTo(range.low()) < 0 || value.compareTo(range.high()) > 0;
    }

    private static String value(BigDecimal value, Unit unit) {
        // a pH is a bare number whose name says what it is
        return Decimals.text(value) + (unit == Unit.PH ? "" : " " + unit.symbol());
    }
}
