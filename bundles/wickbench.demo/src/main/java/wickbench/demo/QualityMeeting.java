package wickbench.demo;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.reading.Owed;

/**
 * Twice a week somebody who reads no strips decides on what is owed since more than a day and a half, as plants do.
 *
 * <p>So what is owed at the end is that of the last days.
 */
final class QualityMeeting {
    private static final Set<DayOfWeek> DAYS = Set.of(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
    private static final LocalTime BEGINS = LocalTime.of(14, 40);
    private static final Duration OLD = Duration.ofHours(36);

    private final Span span;
    private final Agenda agenda;
    private final OwedWork owed;
    private final StockEntries entries;
    private final PersonId quality;

    QualityMeeting(Plant plant, Span span, Agenda agenda, Doors doors) {
        this.span = span;
        this.agenda = agenda;
        this.owed = doors.owed();
        this.entries = new StockEntries(doors);
        this.quality = plant.people().stream()
                .filter(worker -> worker.roles().contains(Role.REVIEWER))
                .map(Plant.Worker::id)
                .findFirst()
                .orElseThrow();
    }

    void plan() {
        span.days().stream().filter(day -> DAYS.contains(day.getDayOfWeek())).forEach(this::plan);
    }

    private void plan(LocalDate day) {
        agenda.at(day.atTime(BEGINS).atZone(span.zone()).toInstant(), this::decide);
    }

    private void decide() {
        Instant before = entries.now().minus(OLD);
        for (OwedItem item : owed.open()) {
            if (item.since().isBefore(before) && item.step() != Step.DECIDE) {
                Owed what = item.step().owed();
                entries.later(
                        quality, Settled.KIND, new Settled(item.owes(), what, reason(item.step()), List.of()).body());
            }
        }
        entries.flush();
    }

    private static String reason(Step step) {
        return switch (step) {
            case HOLD -> "The line was cleaned and tested before the next start; what was made meanwhile was reworked.";
            case RE_CLEAN -> "Cleaned again before the line was started; seen by quality.";
            case RE_TEST -> "Sampled again with its neighbours at the next changeover: not detected.";
            case STOP_AND_CALL_QUALITY -> "The lot gives invalid strips; the place was sampled again with another lot.";
            case REPEAT_CONTROL, REPEAT_AFTER_CONTROL, RUN_CONTROL -> "The next control of the kit was good.";
            case REPEAT_SAME_EXTRACT, REPEAT_NEW_SAMPLE, REPEAT_DILUTED, BRACKET, DECIDE ->
                "The extract was gone; the place was sampled again.";
        };
    }
}
