package wickbench.bench.run;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.MethodId;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/** Strips for tests: five minutes to develop, one to be read in (common practice, no source). */
public final class TestStrips {
    static final Duration DEVELOP = Duration.ofMinutes(5);
    static final Duration WINDOW = Duration.ofMinutes(1);

    private TestStrips() {}

    static List<RunStrip> many(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> strip(number, Optional.empty()))
                .toList();
    }

    /** Returns a strip of the tests' nut method. */
    public static RunStrip strip(int number, Optional<RunControl> control) {
        return timed(number, control, DEVELOP, WINDOW, false);
    }

    public static RunStrip timed(
            int number, Optional<RunControl> control, Duration develop, Duration window, boolean drawn) {
        Reading unread = new Reading(
                new Sample(
                        "S" + number,
                        "Line 2 filler",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        control),
                new MethodId("nut-swab"),
                Route.SWAB_DRY,
                new LotId("L77"),
                new PersonId("ana"),
                Optional.empty(),
                new Times(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new Strip(
                        Format.SANDWICH_HOOK,
                        Map.of(
                                LineRole.CONTROL, Seen.DAMAGED,
                                LineRole.HOOK, Seen.DAMAGED,
                                LineRole.TEST, Seen.DAMAGED)),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
        return new RunStrip(number, unread, develop, window, Optional.empty(), drawn);
    }

    public static Map<LineRole, Seen> lines(Seen control, Seen hook, Seen test) {
        return Map.of(LineRole.CONTROL, control, LineRole.HOOK, hook, LineRole.TEST, test);
    }
}
