package wickbench.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wickbench.api.reading.ReadingDoor.Kept;

/** What happens on the lines: shifts, changeovers, cleaning, and the strips that follow. */
final class Floor {
    private static final double LOOKED_BEFORE_CLEANING = 0.2;

    private final Plant plant;
    private final Span span;
    private final Agenda agenda;
    private final SamplePlan samples;
    private final Bench bench;
    private final Records records;
    private final Chance chance;

    Floor(Plant plant, Span span, Agenda agenda, SamplePlan samples, Bench bench, Records records, Chance chance) {
        this.plant = plant;
        this.span = span;
        this.agenda = agenda;
        this.samples = samples;
        this.bench = bench;
        this.records = records;
        this.chance = chance;
    }

    /** One shift of a line, with what was made before it. */
    private record Shift(
            Plant.Line line,
            Crew crew,
            LocalDate day,
            Instant starts,
            int number,
            Plant.Product before,
            Plant.Product now) {
        List<String> leaving() {
            return before.allergens().stream()
                    .filter(allergen -> !now.allergens().contains(allergen))
                    .toList();
        }

        Optional<String> batch() {
            return Optional.of(Codes.batch(now, day, number));
        }
    }

    /** Plans every shift of the span. */
    void plan() {
        for (int line = 0; line < plant.lines().size(); line++) {
            plan(line);
        }
    }

    private void plan(int at) {
        Plant.Line line = plant.lines().get(at);
        Plant.Product before = plant.product(line.week().get(line.week().size() - 1));
        for (LocalDate day : span.days()) {
            if (plant.works(day)) {
                for (int number = 0; number < plant.shifts().size(); number++) {
                    Plant.Product now = plant.made(line, day, number);
                    Instant starts = day.atTime(plant.shifts().get(number))
                            .atZone(span.zone())
                            .toInstant();
                    Shift shift = new Shift(line, Crew.of(plant, at, day, number), day, starts, number, before, now);
                    agenda.at(starts, () -> begin(shift));
                    before = now;
                }
            }
        }
    }

    private void begin(Shift shift) {
        if (!shift.leaving().isEmpty()) {
            changeOver(shift);
        } else if (shift.number() == 0) {
            Instant at = later(shift.starts(), 30, 55);
            perform(run(shift, at, samples.startUp(shift.line(), shift.now(), at)));
        }
    }

    private void changeOver(Shift shift) {
        Instant at = shift.starts();
        if (chance.happens(LOOKED_BEFORE_CLEANING)) {
            Instant early = later(at, 25, 40);
            perform(run(shift, early, samples.beforeCleaning(shift.line(), shift.leaving(), early)));
        }
        Instant cleaned = later(at, 95, 140);
        perform(run(shift, cleaned, samples.changeover(shift.line(), shift.leaving(), cleaned)));
    }

    private static Run run(Shift shift, Instant begins, List<Task> tasks) {
        return new Run(shift.line(), begins, shift.crew(), shift.batch(), tasks);
    }

    /** Lets a run be worked now and recorded when its last strip is read; does nothing without strips. */
    private void perform(Run run) {
        if (run.tasks().isEmpty()) {
            return;
        }
        Bench.Worked worked = bench.work(run);
        agenda.at(later(worked.ends(), 2, 8), () -> record(worked));
    }

    private void record(Bench.Worked worked) {
        Run run = worked.run();
        List<Kept> kept = records.record(worked);
        Instant soon = later(worked.ends(), 9, 20);
        List<Task> strips = FollowUps.strips(run, kept);
        perform(run.followedBy(soon, samples.withControls(run.line(), strips, soon)));
        Instant cleaned = later(worked.ends(), 60, 90);
        List<Task> positives = FollowUps.positives(run, kept);
        perform(run.followedBy(cleaned, samples.cleanedAgain(run.line(), positives, cleaned)));
    }

    private Instant later(Instant than, int fewestMinutes, int mostMinutes) {
        return than.plus(Duration.ofMinutes(chance.between(fewestMinutes, mostMinutes)))
                .plusSeconds(chance.between(0, 59));
    }
}
