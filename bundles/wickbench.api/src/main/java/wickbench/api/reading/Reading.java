package wickbench.api.reading;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;

/**
 * What people say of one strip: sample, times, lines. Not yet judged.
 *
 * @param operator who ran and read it
 * @param observer an authorised observer who read it in the operator's stead
 * @param second a second reader's answers, given blind to the first
 * @param preChecks what the method's pre-checks measured, by their names
 * @param origin how it came in
 */
public record Reading(
        Sample sample,
        MethodId method,
        Route route,
        LotId lot,
        PersonId operator,
        Optional<PersonId> observer,
        Times times,
        Strip strip,
        Optional<SecondReading> second,
        Map<String, BigDecimal> preChecks,
        Origin origin) {
    public Reading {
        preChecks = Map.copyOf(preChecks);
    }

    /** What a second reader saw. */
    public record SecondReading(PersonId reader, Strip strip) {}

    /** How a reading came in. */
    public sealed interface Origin {
        /** Answered on screen at the bench. */
        record Bench() implements Origin {}

        /** Typed from a sheet: the file's name and the line in it, counted from 1. */
        record Sheet(String file, int line) implements Origin {}
    }
}
