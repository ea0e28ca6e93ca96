package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Founding;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;

/** Founds a home with a simulated clock and lets the plant's months pass in it. */
final class Generator {
    private static final Duration FOUNDED = Duration.ofHours(4);
    private static final Duration ENROLLED = FOUNDED.plusMinutes(12);
    private static final Duration ISSUED = FOUNDED.plusMinutes(47);
    private static final Duration VERIFIED = ISSUED.plusMinutes(20);
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
        SimulatedClock clock = found(seed, plant, span);
        Lots lots = new Lots(from);
        Story story = Story.of(plant, span, lots);
        Records records = new Records(doors.readings(), story);
        Agenda agenda = agenda(plant, span, lots, story, records, new Chance(seed));
        StockRoom stock = stock(plant, new StockRoom.Scene(span, lots, agenda, records, methods(plant)), seed);
        TrainingYear training = new TrainingYear(plant, span, agenda, doors, seed);
        records.also(training);
        training.plan();
        Quality quality = Quality.of(plant, span, agenda, doors);
        records.also(quality.held());
        records.witness(quality.reviews()::hear);
        quality.plan();
        PlantWeeks book = new PlantWeeks(plant, span, agenda, doors);
        records.also(book);
        book.plan();
        live(span, agenda, clock, progress);
        List<Told> told = Stream.concat(
                        story.told().stream(), Stream.of(stock.told(), training.told(), quality.told(), book.told()))
                .toList();
        return new Made(plant, span, doors.journal().size(plant.station()), records.outcomes(), told);
    }

    private static List<Method> methods(Plant plant) {
        return List.copyOf(DemoFiles.methods(plant).values());
    }

    /** With a chance of its own, so that the strips of the year stay as they are without it. */
    private StockRoom stock(Plant plant, StockRoom.Scene scene, long seed) {
        StockRoom stock = new StockRoom(plant, DemoFiles.stock(), doors, scene, new Chance(~seed));
        scene.records().also(stock);
        stock.plan();
        return stock;
    }

    private SimulatedClock found(long seed, Plant plant, Span span) {
        SimulatedClock clock =
                doors.home().simulate(seed, span.startOf(span.from()).plus(FOUNDED));
        doors.journal().found(new Founding(plant.station(), plant.zone(), OptionalLong.of(seed)));
        return clock;
    }

    private Agenda agenda(Plant plant, Span span, Lots lots, Story story, Records records, Chance chance) {
        Map<MethodId, Method> methods = DemoFiles.methods(plant);
        Agenda agenda = new Agenda();
        office(plant, span, methods, agenda);
        SamplePlan samples = new SamplePlan(plant, methods, span, new Residue(story, chance), new Codes(), chance);
        Bench bench = new Bench(plant, span, lots, story, chance);
        new Floor(plant, span, agenda, samples, bench, records, chance).plan();
        return agenda;
    }

    /** Plans what the office does: people first, then methods, and one method anew with the changed cleaning. */
    private void office(Plant plant, Span span, Map<MethodId, Method> methods, Agenda agenda) {
        PersonId office = plant.office();
        Instant day = span.startOf(span.from());
        oneAfterAnother(
                agenda,
                day.plus(ENROLLED),
                officeFirst(plant),
                worker -> doors.people().enrol(worker.id(), worker.name(), worker.roles(), office));
        oneAfterAnother(
                agenda,
                day.plus(ISSUED),
                methods.values(),
                method -> doors.methods().issue(method, office));
        MethodEvidence evidence = new MethodEvidence(doors, reviewer(plant));
        oneAfterAnother(agenda, day.plus(VERIFIED), methods.values(), evidence::of);
        Instant changed = span.startOf(StubbornChangeover.changes(span)).plus(ISSUED);
        agenda.at(changed, () -> doors.methods().issue(DemoFiles.secondEdition(), office));
        agenda.at(changed.plus(BETWEEN), () -> evidence.of(DemoFiles.secondEdition()));
    }

    private static PersonId reviewer(Plant plant) {
        return plant.people().stream()
                .filter(worker -> worker.roles().contains(Role.REVIEWER))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static <T> void oneAfterAnother(Agenda agenda, Instant first, Collection<T> each, Consumer<T> act) {
        Instant at = first;
        for (T one : each) {
            agenda.at(at, () -> act.accept(one));
            at = at.plus(BETWEEN);
        }
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
