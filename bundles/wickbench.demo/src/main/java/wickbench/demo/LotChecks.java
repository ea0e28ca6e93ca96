package wickbench.demo;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/** The four strips by which a delivery is checked, all as they must be. */
final class LotChecks {
    private LotChecks() {}

    /**
     * @param begins when the first strip is started; one follows another by half a minute
     */
    static List<Reading> strips(LotId lot, Method method, PersonId operator, Instant begins) {
        List<Reading> strips = new ArrayList<>();
        for (RunControl control :
                List.of(RunControl.BLANK, RunControl.LOW_POSITIVE, RunControl.BLANK, RunControl.LOW_POSITIVE)) {
            strips.add(strip(lot, method, operator, control, begins.plusSeconds(30L * strips.size()), strips.size()));
        }
        return strips;
    }

    private static Reading strip(
            LotId lot, Method method, PersonId operator, RunControl control, Instant started, int number) {
        return new Reading(
                sample(lot.value() + "-" + (number + 1), control),
                method.ref().id(),
                method.route(),
                lot,
                operator,
                Optional.empty(),
                times(method, started),
                strip(method.format(), control == RunControl.LOW_POSITIVE),
                Optional.empty(),
                preChecks(method),
                new Reading.Origin.Bench());
    }

    private static Sample sample(String code, RunControl control) {
        return new Sample(
                code,
                "bench",
                Optional.empty(),
                Optional.empty(),
                Optional.of(Reason.LOT_CHECK),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.of(control));
    }

    private static Times times(Method method, Instant started) {
        Instant extracted = started.minus(Duration.ofMinutes(3));
        return new Times(
                Optional.of(extracted
                        .minus(method.timing().warmUp().orElse(Duration.ZERO))
                        .minusSeconds(300)),
                Optional.of(extracted),
                Optional.of(method.timing().shake().orElse(Duration.ZERO).plusSeconds(5)),
                Optional.of(started),
                Optional.of(started.plus(method.timing().develop()).plusSeconds(20)));
    }

    private static Strip strip(Format format, boolean positive) {
        boolean line = positive != (format == Format.COMPETITIVE);
        return new Strip(
                format,
                format.lines().stream()
                        .collect(Collectors.toMap(
                                role -> role, role -> role == LineRole.TEST && !line ? Seen.NOT_SEEN : Seen.SEEN)));
    }

    private static Map<String, BigDecimal> preChecks(Method method) {
        return method.preChecks().stream()
                .collect(Collectors.toMap(
                        Method.PreCheck::name, check -> check.range().low()));
    }
}
