package wickbench.reading;

import java.util.EnumSet;
import java.util.Set;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Visual;

/** What has to be done next because of a reading. */
final class Debts {
    private Debts() {}

    static Set<Owed> of(Case test, Outcome outcome, boolean sign) {
        Sample sample = test.reading().sample();
        return sample.control()
                .map(control -> ofControl(control, outcome))
                .orElseGet(() -> ofSample(test, outcome, sign));
    }

    /** A control stands for no line and no product, so it is run again or nothing. */
    private static Set<Owed> ofControl(RunControl control, Outcome outcome) {
        boolean good = control == RunControl.BLANK ? outcome == Outcome.NEGATIVE : outcome.positive();
        return good ? Set.of() : Set.of(Owed.REPEAT);
    }

    private static Set<Owed> ofSample(Case test, Outcome outcome, boolean sign) {
        Set<Owed> owed = EnumSet.noneOf(Owed.class);
        owed.addAll(ofOutcome(test, outcome));
        if (sign) {
            owed.add(Owed.HOLD);
        }
        if (HookRule.dilutionsOwed(test, outcome)) {
            owed.add(Owed.REPEAT_DILUTED);
        }
        if (test.reading().sample().visual().filter(Visual.SOILED::equals).isPresent()) {
            owed.add(Owed.RE_CLEAN);
        }
        return owed;
    }

    private static Set<Owed> ofOutcome(Case test, Outcome outcome) {
        return switch (outcome) {
            case NEGATIVE -> Set.of();
            case INVALID -> Set.of(Owed.REPEAT);
            case POSITIVE -> ofPositive(test);
            case POSITIVE_ABOVE_RANGE -> withBracket(ofPositive(test));
        };
    }

    private static Set<Owed> ofPositive(Case test) {
        // food is decided on its own; there is no surface to clean and sample anew
        return test.method().route().food() ? Set.of(Owed.HOLD) : Set.of(Owed.HOLD, Owed.RE_CLEAN, Owed.RE_TEST);
    }

    private static Set<Owed> withBracket(Set<Owed> owed) {
        Set<Owed> more = EnumSet.copyOf(owed);
        more.add(Owed.BRACKET);
        return more;
    }
}
