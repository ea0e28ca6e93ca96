package wickbench.reading;

import java.util.stream.Stream;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Severity;

/** One idea about what may be wrong with a reading. */
@FunctionalInterface
interface Rule {
    /** What a finding says was measured when nobody stated it. */
    String NOT_STATED = "not stated";

    Stream<Finding> look(Case test);

    static Finding voids(String rule, String measured, String asked) {
        return new Finding(rule, Severity.VOIDS, measured, asked);
    }

    static Finding bars(String rule, String measured, String asked) {
        return new Finding(rule, Severity.BARS_NEGATIVE, measured, asked);
    }

    static Finding caution(String rule, String measured, String asked) {
        return new Finding(rule, Severity.CAUTION, measured, asked);
    }
}
