package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.reading.Verdict;

class JudgementLawsTest {
    @Example
    void theLawsMeetEveryOutcomeOftenEnough() {
        Map<Outcome, Long> met = LongStream.range(0, 2000)
                .mapToObj(seed -> {
                    Anything any = new Anything(seed);
                    Method method = any.method();
                    return Judgement.judge(method, any.reading(method), Surroundings.none())
                            .outcome();
                })
                .collect(Collectors.groupingBy(outcome -> outcome, Collectors.counting()));
        assertThat(met).containsOnlyKeys(Outcome.values());
        assertThat(met.values()).allMatch(count -> count > 40);
    }

    @Property
    void faintnessNeverChangesASandwich(@ForAll long seed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        if (method.format().sandwich()) {
            Verdict faint =
                    Judgement.judge(method, with(reading, as(reading.strip(), Seen.FAINT)), Surroundings.none());
            Verdict strong =
                    Judgement.judge(method, with(reading, as(reading.strip(), Seen.SEEN)), Surroundings.none());
            assertThat(faint.outcome()).isEqualTo(strong.outcome());
            assertThat(faint.sign()).isEqualTo(strong.sign());
        }
    }

    /** Makes every line that is there as strong as given. */
    private static Strip as(Strip strip, Seen strength) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        strip.lines().forEach((role, seen) -> lines.put(role, seen.there() ? strength : seen));
        return new Strip(strip.format(), lines);
    }

    @Property
    void withoutControlNothingIsValid(@ForAll long seed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        Seen gone = any.oneOf(List.of(Seen.NOT_SEEN, Seen.DAMAGED));
        Reading without = with(reading, Given.with(reading.strip(), LineRole.CONTROL, gone));
        assertThat(Judgement.judge(method, without, Surroundings.none()).outcome())
                .isEqualTo(Outcome.INVALID);
    }

    @Property
    void noSurroundingsTurnAnythingIntoNegative(@ForAll long seed, @ForAll boolean controlFailed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        Outcome before = Judgement.judge(method, reading, Surroundings.none()).outcome();
        Outcome after = Judgement.judge(method, reading, new Surroundings(any.answers(), controlFailed))
                .outcome();
        assertThat(after == before || before == Outcome.NEGATIVE && after == Outcome.INVALID)
                .isTrue();
    }

    @Property(tries = 300)
    void noFindingTurnsAGoodReadingIntoNegative(@ForAll Format format, @ForAll @IntRange(max = 999) int pick) {
        FindingsTable.Row row = FindingsTable.ROWS.get(pick % FindingsTable.ROWS.size());
        if (row.fits(format)) {
            Given positive = new Given(format)
                    .with(g -> g.strip = Given.positive(format))
                    .with(row.change());
            assertThat(positive.judge().outcome()).isNotEqualTo(Outcome.NEGATIVE);
        }
    }

    @Property
    void aSecondReaderNeverTakesASignOfAllergenAway(@ForAll long seed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading one = any.reading(method);
        Reading alone = with(one, Optional.empty());
        Verdict before = Judgement.judge(method, alone, Surroundings.none());
        Verdict after = Judgement.judge(method, one, Surroundings.none());
        if (before.holds()) {
            assertThat(after.holds()).isTrue();
        }
    }

    @Property
    void aVerdictThatHoldsSaysSoAndOnlyAnInvalidCarriesASign(@ForAll long seed) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        Verdict verdict = Judgement.judge(method, reading, Surroundings.of(any.answers()));
        boolean sample = reading.sample().control().isEmpty();
        assertThat(verdict.owed().contains(Owed.HOLD)).isEqualTo(sample && verdict.holds());
        assertThat(verdict.sign() && verdict.outcome() != Outcome.INVALID).isFalse();
        assertThat(verdict.level().isEmpty()).isEqualTo(verdict.outcome() == Outcome.INVALID);
    }

    @Property
    void movingTheWholeTimeAxisChangesNothing(
            @ForAll long seed, @ForAll @LongRange(min = -1_000_000_000_000L, max = 1_000_000_000_000L) long millis) {
        Anything any = new Anything(seed);
        Method method = any.method();
        Reading reading = any.reading(method);
        Times times = reading.times();
        Times moved = new Times(
                move(times.outOfFridge(), millis),
                move(times.extracted(), millis),
                times.shaken(),
                move(times.started(), millis),
                move(times.read(), millis));
        assertThat(Judgement.judge(method, with(reading, moved), Surroundings.none()))
                .isEqualTo(Judgement.judge(method, reading, Surroundings.none()));
    }

    private static Optional<Instant> move(Optional<Instant> instant, long millis) {
        return instant.map(at -> at.plusMillis(millis));
    }

    @Property
    void summerTimeStretchesNoWindow(
            @ForAll @IntRange(max = 7200) int secondsAfterMidnight,
            @ForAll @LongRange(min = 0, max = 7_200_000) long elapsedMillis) {
        // the nights on which Madrid put its clocks forward and back in 2026
        for (String night : List.of("2026-03-29T00:30:00", "2026-10-25T01:30:00")) {
            ZonedDateTime start = ZonedDateTime.of(LocalDateTime.parse(night), ZoneId.of("Europe/Madrid"))
                    .plusSeconds(secondsAfterMidnight);
            ZonedDateTime read = start.plus(Duration.ofMillis(elapsedMillis));
            assertThat(started(start, read).judge().outcome())
                    .isEqualTo(
                            elapsedMillis >= 300_000 && elapsedMillis <= 360_000 ? Outcome.NEGATIVE : Outcome.INVALID);
        }
    }

    @Example
    void theClockOnTheWallDoesNotCount() {
        ZoneId madrid = ZoneId.of("Europe/Madrid");
        ZonedDateTime spring = ZonedDateTime.of(LocalDateTime.parse("2026-03-29T01:58:00"), madrid);
        ZonedDateTime springRead = ZonedDateTime.of(LocalDateTime.parse("2026-03-29T03:03:30"), madrid);
        assertThat(started(spring, springRead).judge().outcome()).isEqualTo(Outcome.NEGATIVE);
        ZonedDateTime autumn = ZonedDateTime.of(LocalDateTime.parse("2026-10-25T02:58:00"), madrid);
        ZonedDateTime autumnRead = ZonedDateTime.of(LocalDateTime.parse("2026-10-25T02:03:30"), madrid)
                .withLaterOffsetAtOverlap();
        assertThat(started(autumn, autumnRead).judge().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(started(autumn, autumnRead.withEarlierOffsetAtOverlap())
                        .judge()
                        .outcome())
                .isEqualTo(Outcome.INVALID);
    }

    private static Given started(ZonedDateTime start, ZonedDateTime read) {
        return new Given(Format.SANDWICH_HOOK).with(g -> {
            g.outOfFridge = Optional.of(start.minusMinutes(30).toInstant());
            g.extracted = Optional.of(start.minusMinutes(10).toInstant());
            g.started = Optional.of(start.toInstant());
            g.read = Optional.of(read.toInstant());
        });
    }

    private static Reading with(Reading reading, Strip strip) {
        return with(reading, reading.times(), strip, reading.second());
    }

    private static Reading with(Reading reading, Times times) {
        return with(reading, times, reading.strip(), reading.second());
    }

    private static Reading with(Reading reading, Optional<Reading.SecondReading> second) {
        return with(reading, reading.times(), reading.strip(), second);
    }

    private static Reading with(Reading reading, Times times, Strip strip, Optional<Reading.SecondReading> second) {
        return new Reading(
                reading.sample(),
                reading.method(),
                reading.route(),
                reading.lot(),
                reading.operator(),
                reading.observer(),
                times,
                strip,
                second,
                reading.preChecks(),
                reading.origin());
    }
}
