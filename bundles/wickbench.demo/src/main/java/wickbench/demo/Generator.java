package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Founding;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** Founds a home with a simulated clock and lets the plant's months pass in it. */
final class Generator {
    private static final Duration FOUNDED = Duration.ofHours(4);
    private static final Duration ENROLLED = FOUNDED.plusMinutes(12);
    private static final Duration ISSUED = FOUNDED.plusMinutes(47);
    private static final Duration BETWEEN = Duration.ofSeconds(95);

    private final Doors doors;

    Generator(Doors doors) {
        this.doors = doors;
    }

    /**
     * What was made.
     *
     * @param told the chapters, in numbers
     */
    record Made(Plant plant, Span span, long entries, Outcomes outcomes, List<Told> told) {}

    /**
     * Records the days from {@code from} to the one before {@code until}.
     *
     * @throws wickbench.api.check.Refusal when the home was founded already
     */
    Made make(long seed, LocalDate from, LocalDate until, Progress progress) {
        Plant plant = DemoFiles.plant();
        Span span = new Span(from, until, plant.zone());
        Instant begins = span.startOf(from).plus(FOUNDED);
        SimulatedClock clock = doors.home().simulate(seed, begins);
        doors.journal().found(new Founding(plant.station(), plant.zone(), OptionalLong.of(seed)));

        Chance chance = new Chance(seed);
        Lots lots = new Lots(from);
        Story story = Story.of(plant, span, lots);
        Map<MethodId, Method> methods = DemoFiles.methods(plant);
        Agenda agenda = new Agenda();
        office(plant, span, methods, agenda);
        SamplePlan samples = new SamplePlan(plant, methods, span, new Residue(story, chance), new Codes(), chance);
        Records records = new Records(doors.readings(), story);
        Bench bench = new Bench(plant, span, lots, story, chance);
        new Floor(plant, span, agenda, samples, bench, records, chance).plan();
        live(span, agenda, clock, progress);
        return new Made(plant, span, doors.journal().size(plant.station()), records.outcomes(), story.told());
    }

    /** Plans what the office does: people first, then methods, and one method anew with the changed cleaning. */
    private void office(Plant plant, Span span, Map<MethodId, Method> methods, Agenda agenda) {
        PersonId office = plant.office();
        Instant day = span.startOf(span.from());
        Instant at = day.plus(ENROLLED);
        for (Plant.Worker worker : officeFirst(plant)) {
            agenda.at(at, () -> doors.people().enrol(worker.id(), worker.name(), worker.roles(), office));
            at = at.plus(BETWEEN);
        }
        at = day.plus(ISSUED);
        for (Method method : methods.values()) {
            agenda.at(at, () -> doors.methods().issue(method, office));
            at = at.plus(BETWEEN);
        }
        Instant changed = span.startOf(StubbornChangeover.changes(span)).plus(ISSUED);
        agenda.at(changed, () -> doors.methods().issue(DemoFiles.secondEdition(), office));
    }

    /** Whoever enrols others must be enrolled before them. */
    private static List<Plant.Worker> officeFirst(Plant plant) {
        return plant.people().stream()
                .sorted(Comparator.comparing(worker -> !worker.id().equals(plant.office())))
                .toList();
    }

    private static void live(Span span, Agenda agenda, SimulatedClock clock, Progress progress) {
        Instant end = span.startOf(span.until());
        long total = span.days().size();
        boolean goOn = true;
        while (goOn && agenda.has(end)) {
            clock.moveTo(agenda.next());
            agenda.step();
            goOn = progress.at(
                    Duration.between(span.startOf(span.from()), clock.instant()).toDays(), total);
        }
    }
}
