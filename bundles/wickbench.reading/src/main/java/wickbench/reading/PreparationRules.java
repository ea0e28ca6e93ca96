package wickbench.reading;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.method.Method.Timing;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Times;

/** Whether kit and sample were made ready as the method asks; what is not stated is a caution. */
final class PreparationRules {
    private PreparationRules() {}

    static Stream<Finding> warmUpShort(Case test) {
        Times times = test.reading().times();
        return atLeast(
                "time.warm-up-short", timing(test).warmUp(), TimeRules.between(times.outOfFridge(), times.started()));
    }

    static Stream<Finding> shakeShort(Case test) {
        return atLeast(
                "time.shake-short", timing(test).shake(), test.reading().times().shaken());
    }

    static Stream<Finding> extractOld(Case test) {
        Times times = test.reading().times();
        return timing(test)
                .extractHold()
                .flatMap(hold -> extractOld(hold, TimeRules.between(times.extracted(), times.started())))
                .stream();
    }

    private static Optional<Finding> extractOld(Duration hold, Optional<Duration> age) {
        String rule = "time.extract-old";
        String asked = "at most " + Spans.text(hold);
        if (age.isEmpty()) {
            return Optional.of(Rule.caution(rule, Rule.NOT_STATED, asked));
        }
        // an extract younger than nothing has a wrong time, so its age is not known to be right
        return age.filter(time -> time.isNegative() || time.compareTo(hold) > 0)
                .map(time -> Rule.bars(rule, Spans.text(time), asked));
    }

    private static Stream<Finding> atLeast(String rule, Optional<Duration> least, Optional<Duration> stated) {
        return least.flatMap(asked -> atLeast(rule, asked, stated)).stream();
    }

    private static Optional<Finding> atLeast(String rule, Duration least, Optional<Duration> stated) {
        String asked = "at least " + Spans.text(least);
        if (stated.isEmpty()) {
            return Optional.of(Rule.caution(rule, Rule.NOT_STATED, asked));
        }
        return stated.filter(time -> time.compareTo(least) < 0).map(time -> Rule.bars(rule, Spans.text(time), asked));
    }

    private static Timing timing(Case test) {
        return test.method().timing();
    }
}
