package wickbench.demo;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.Settled;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;

/**
 * Twice a week somebody who reads no strips decides on what is owed since more than a day and a half, as plants do; on what is held
 * since more than five days, once its points were Negative again.
 *
 * <p>So what is owed at the end is that of the last days.
 */
final class QualityMeeting {
    private static final Set<DayOfWeek> DAYS = Set.of(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
    private static final LocalTime BEGINS = LocalTime.of(12, 50);
    private static final Duration OLD = Duration.ofHours(36);
    private static final Duration HELD_LONG = Duration.ofDays(5);
    private static final Duration GIVEN_UP = Duration.ofDays(14);
    private static final Set<Step> OF_A_HOLD = Set.of(Step.HOLD, Step.RE_CLEAN, Step.RE_TEST);

    private final Span span;
    private final Agenda agenda;
    private final OwedWork owed;
    private final StockEntries entries;
    private final PersonId quality;
    private final HeldProduct held;
    private final LineReleases releases;

    QualityMeeting(Span span, Agenda agenda, Doors doors, PersonId quality, HeldProduct held, LineReleases releases) {
        this.span = span;
        this.agenda = agenda;
        this.owed = doors.owed();
        this.entries = new StockEntries(doors);
        this.quality = quality;
        this.held = held;
        this.releases = releases;
    }

    void plan() {
        span.days().stream().filter(day -> DAYS.contains(day.getDayOfWeek())).forEach(this::plan);
    }

    private void plan(LocalDate day) {
        agenda.at(day.atTime(BEGINS).atZone(span.zone()).toInstant(), this::decide);
    }

    private void decide() {
        List<OwedItem> open = owed.open();
        open.stream()
                .filter(item -> !OF_A_HOLD.contains(item.step()) && isOld(item, OLD))
                .forEach(this::settle);
        open.stream()
                .filter(item -> item.step() == Step.HOLD && isOld(item, HELD_LONG))
                .forEach(item -> held.decide(item.owes(), ofItself(item)));
        open.stream()
                .filter(item -> OF_A_HOLD.contains(item.step()) && item.step() != Step.HOLD && isOld(item, GIVEN_UP))
                .forEach(this::settle);
        entries.flush();
        held.flush();
        releases.release(owed::open);
    }

    private List<OwedItem> ofItself(OwedItem hold) {
        return owed.of(hold.owes()).stream()
                .filter(item -> item.owes().equals(hold.owes()))
                .toList();
    }

    private boolean isOld(OwedItem item, Duration than) {
        return item.since().isBefore(entries.now().minus(than)) && item.step() != Step.DECIDE;
    }

    private void settle(OwedItem item) {
        entries.later(
                quality,
                Settled.KIND,
                new Settled(item.owes(), item.step().owed(), reason(item.step()), List.of()).body());
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
