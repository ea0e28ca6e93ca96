package wickbench.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/** Where a run's strips are worked: what people write down of them. */
final class Bench {
    private static final double READ_TWICE = 0.35;
    private static final double SPOILT_RINSE = 0.01;

    private final Plant plant;
    private final Span span;
    private final Lots lots;
    private final Story story;
    private final Chance chance;
    private final StripModel model;
    private final RunClock clock;

    Bench(Plant plant, Span span, Lots lots, Story story, Chance chance) {
        this.plant = plant;
        this.span = span;
        this.lots = lots;
        this.story = story;
        this.chance = chance;
        this.model = new StripModel(chance);
        this.clock = new RunClock(chance);
    }

    /**
     * A run once it is worked.
     *
     * @param readings one for each task of the run, in order
     * @param ends when the last strip was read
     */
    record Worked(Run run, List<Reading> readings, Instant ends) {}

    Worked work(Run run) {
        List<Times> times = clock.times(run);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            readings.add(reading(run, run.tasks().get(i), times.get(i)));
        }
        Instant ends = times.stream()
                .flatMap(each -> each.read().stream())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new Worked(run, readings, ends);
    }

    private Reading reading(Run run, Task task, Times times) {
        Method method = task.method();
        Plant.Kit kit = plant.kitNamed(method.kit());
        LotId lot = lots.inUse(kit, span.dayOf(run.begins()));
        Strip strip = model.develop(method.format(), kit, task.inTube(), story.invalidRate(kit, lot));
        PersonId operator = run.crew().operator();
        Optional<PersonId> observer =
                Optional.of(run.crew().second()).filter(each -> story.observed(operator, run.begins()));
        double misses = story.missesFaint(observer.orElse(operator), run.begins());
        return new Reading(
                sample(run, task),
                method.ref().id(),
                method.route(),
                lot,
                operator,
                observer,
                times,
                model.seenBy(misses, strip),
                second(run, strip).filter(second -> observer.isEmpty()),
                preChecks(method),
                new Reading.Origin.Bench());
    }

    private Sample sample(Run run, Task task) {
        boolean ofPoint = task.point().isPresent();
        return new Sample(
                task.code(),
                task.place(),
                Optional.of(run.line().id()),
                task.control().isPresent() ? Optional.empty() : run.batch(),
                Optional.of(task.reason()),
                ofPoint ? Optional.of(procedure(run)) : Optional.empty(),
                task.visual(),
                Optional.empty(),
                BigDecimal.valueOf(task.thinned()),
                task.control());
    }

    private String procedure(Run run) {
        return run.line().procedure() + " edition " + story.procedureEdition(run.line(), run.begins());
    }

    private Optional<Reading.SecondReading> second(Run run, Strip strip) {
        if (!chance.happens(READ_TWICE)) {
            return Optional.empty();
        }
        double misses = story.missesFaint(run.crew().second(), run.begins());
        return Optional.of(new Reading.SecondReading(run.crew().second(), model.seenBy(misses, strip)));
    }

    private Map<String, BigDecimal> preChecks(Method method) {
        if (method.preChecks().isEmpty()) {
            return Map.of();
        }
        Method.PreCheck check = method.preChecks().get(0);
        BigDecimal high = check.range().high();
        BigDecimal low = check.range().low();
        BigDecimal tenths = BigDecimal.valueOf(chance.between(1, 9), 1);
        BigDecimal value = chance.happens(SPOILT_RINSE)
                ? high.add(tenths)
                : low.add(high.subtract(low).multiply(tenths));
        return Map.of(check.name(), value.setScale(1, java.math.RoundingMode.HALF_UP));
    }
}
