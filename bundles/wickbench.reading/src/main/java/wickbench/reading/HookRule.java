package wickbench.reading;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.method.Format;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Visual;

/** A strip without hook line cannot tell a Negative from far too much allergen. */
final class HookRule {
    private HookRule() {}

    static Optional<Finding> noHookLine(Case test, Outcome outcome) {
        return applies(test, outcome)
                ? Optional.of(Rule.caution("format.no-hook-line", measured(test), asked(test)))
                : Optional.empty();
    }

    /** Tells whether a Negative may stand only after its dilutions. */
    static boolean dilutionsOwed(Case test, Outcome outcome) {
        Sample sample = test.reading().sample();
        return applies(test, outcome) && undiluted(sample) && sample.control().isEmpty() && plausible(sample);
    }

    private static boolean applies(Case test, Outcome outcome) {
        return outcome == Outcome.NEGATIVE && test.method().format() == Format.SANDWICH;
    }

    private static String measured(Case test) {
        return dilutionsOwed(test, Outcome.NEGATIVE) ? "undiluted only" : "no hook line";
    }

    private static String asked(Case test) {
        return dilutionsOwed(test, Outcome.NEGATIVE) ? "×10 and ×100" : "a hook line";
    }

    private static boolean undiluted(Sample sample) {
        return sample.dilution().compareTo(BigDecimal.ONE) == 0;
    }

    private static boolean plausible(Sample sample) {
        boolean soiled = sample.visual().filter(Visual.SOILED::equals).isPresent();
        // a sample of which nobody says why it was taken may hold anything
        return soiled
                || sample.reason().map(Reason::grossContaminationPlausible).orElse(true);
    }
}
