package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wickbench.api.json.Json;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.ledger.Filter;
import wickbench.ledger.acts.Point;
import wickbench.ledger.trend.TrendBase;
import wickbench.ledger.trend.Trending.Asked;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.ledger.trend.Trending.Events;
import wickbench.ledger.trend.Trending.Kind;
import wickbench.ledger.trend.Trending.Mark;
import wickbench.ledger.trend.Trending.Trend;
import wickbench.testing.Meets;

/** Which strips make a trend, what its charts say of them, and by which period they are measured. */
class TrendTest {
    /** A Monday. */
    private static final Instant MONDAY = Instant.parse("2026-01-05T08:00:00Z");

    private Quality quality;

    @BeforeEach
    void open() throws IOException {
        quality = new Quality();
    }

    @AfterEach
    void close() {
        quality.close();
    }

    private void test(Point point, String batch, Instant at, Seen test, Optional<Reason> reason, int dilution) {
        quality.site.record(strip(point, batch, at, Seen.SEEN, test, reason, dilution, Optional.empty()));
    }

    private void test(Point point, String batch, Instant at, Seen test) {
        test(point, batch, at, test, Optional.of(Reason.CHANGEOVER), 1);
    }

    private static RecordedReading strip(
            Point point,
            String batch,
            Instant at,
            Seen control,
            Seen test,
            Optional<Reason> reason,
            int dilution,
            Optional<RunControl> run) {
        RecordedReading like = Quality.judged("S", point, at, control, test, run, Route.RINSE);
        Reading was = like.reading();
        Sample sample = new Sample(
                "S-" + at.getEpochSecond(),
                point.place(),
                Optional.of(Quality.LINE),
                Optional.of(batch).filter(name -> !name.isEmpty()),
                reason,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.valueOf(dilution),
                run);
        Reading reading = new Reading(
                sample,
                was.method(),
                was.route(),
                was.lot(),
                was.operator(),
                was.observer(),
                was.times(),
                was.strip(),
                was.second(),
                was.preChecks(),
                was.origin());
        return new RecordedReading(reading, like.method(), like.answers(), like.verdict());
    }

    private Trend trend(Events events, Kind kind) {
        return quality.doors.trending().of(new Asked(Filter.ALL, events, kind));
    }

    @Test
    @Meets("ISO 22000 9.1.2")
    void only_the_first_test_after_a_clean_counts() {
        test(Quality.NOZZLE, "B-1", MONDAY, Seen.SEEN);
        // a repeat, a re-test after another clean, a dilution, a control, one that is meant to be dirty, a check of a
        // lot
        test(Quality.NOZZLE, "B-1", MONDAY.plusSeconds(600), Seen.SEEN);
        test(Quality.NOZZLE, "B-1", MONDAY.plusSeconds(7200), Seen.NOT_SEEN, Optional.of(Reason.AFTER_CLEANING), 1);
        test(Quality.HOPPER, "B-2", MONDAY, Seen.SEEN, Optional.of(Reason.CHANGEOVER), 10);
        test(Quality.HOPPER, "B-2", MONDAY, Seen.SEEN, Optional.of(Reason.BEFORE_CLEANING), 1);
        test(Quality.HOPPER, "B-2", MONDAY, Seen.SEEN, Optional.of(Reason.LOT_CHECK), 1);
        quality.site.record(strip(
                Quality.HOPPER,
                "",
                MONDAY,
                Seen.SEEN,
                Seen.SEEN,
                Optional.of(Reason.CHANGEOVER),
                1,
                Optional.of(RunControl.LOW_POSITIVE)));
        // another point, and another batch of the same point, stand for themselves
        test(Quality.HOPPER, "B-1", MONDAY, Seen.NOT_SEEN);
        test(Quality.NOZZLE, "B-3", MONDAY.plusSeconds(30_000), Seen.NOT_SEEN);

        assertThat(trend(Events.POSITIVE, Kind.P).marks()).containsExactly(week(3, 1));
    }

    @Test
    void an_invalid_first_strip_is_an_invalid_and_its_repeat_the_first_valid_one() {
        quality.site.record(strip(
                Quality.NOZZLE,
                "B-1",
                MONDAY,
                Seen.NOT_SEEN,
                Seen.NOT_SEEN,
                Optional.of(Reason.CHANGEOVER),
                1,
                Optional.empty()));
        test(Quality.NOZZLE, "B-1", MONDAY.plusSeconds(600), Seen.SEEN);

        assertThat(trend(Events.INVALID, Kind.P).marks()).containsExactly(week(1, 1));
        assertThat(trend(Events.POSITIVE, Kind.P).marks()).containsExactly(week(1, 1));
    }

    private static Mark week(long strips, long events) {
        LocalDate monday = LocalDate.of(2026, 1, 5);
        return new Mark(monday.toString(), strips, events, Optional.of(monday), Optional.empty());
    }

    /** Ten batches a week; so many of them Positive. */
    private void weeks(int... positives) {
        for (int week = 0; week < positives.length; week++) {
            for (int batch = 0; batch < 10; batch++) {
                Instant at = MONDAY.plus(7L * week, ChronoUnit.DAYS).plusSeconds(600L * batch);
                test(
                        batch % 2 == 0 ? Quality.NOZZLE : Quality.HOPPER,
                        "B-" + week + "-" + batch,
                        at,
                        batch < positives[week] ? Seen.SEEN : Seen.NOT_SEEN);
            }
        }
    }

    private static double figure(Trend trend, String name) {
        return ((Json.Num) trend.answer().orElseThrow().figures().members().get(name))
                .value()
                .doubleValue();
    }

    private static List<String> signals(Trend trend) {
        return ((Json.Arr) trend.answer().orElseThrow().figures().members().get("signals"))
                .items().stream()
                        .map(signal -> ((Json.Text)
                                                ((Json.Obj) signal).members().get("kind"))
                                        .value() + "@"
                                + ((Json.Obj) signal).members().get("point").canonical())
                        .toList();
    }

    /** p̄ ± 3√(p̄(1 − p̄)/n) (Montgomery, chapter 7): 8 of 80, n 10 gives 0.1 + 3·0.0948683 = 0.3846050. */
    @Test
    void a_week_above_its_limit_is_a_signal() {
        weeks(1, 0, 1, 0, 1, 0, 0, 5);
        Trend trend = trend(Events.POSITIVE, Kind.P);
        assertThat(figure(trend, "centre")).isEqualTo(0.1);
        assertThat(figure(trend, "upper")).isCloseTo(0.384605, within(1e-6));
        assertThat(signals(trend)).contains("above-limit@8");
        assertThat(trend.points().get(0).name()).isEqualTo(Quality.NOZZLE.place());
        assertThat(trend.cells()).hasSize(16);
        LocalDate last = LocalDate.of(2026, 1, 5).plusWeeks(7);
        assertThat(quality.doors.trending().behind(trend.asked(), Optional.of(last), Optional.empty()))
                .hasSize(10)
                .filteredOn(Behind::event)
                .hasSize(5);
        assertThat(quality.doors
                        .trending()
                        .behind(trend.asked(), Optional.of(last), Optional.of(Quality.NOZZLE.place())))
                .hasSize(5)
                .allMatch(each -> each.place().equals(Quality.NOZZLE.place()));
    }

    /** Frozen over the first four weeks, 2 of 40: centre 0.05, upper 0.05 + 3√(0.05·0.95/10) = 0.2567607. */
    @Test
    void limits_are_frozen_over_a_period_until_the_next_entry() {
        weeks(1, 0, 1, 0, 0, 3, 0, 3);
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        assertThat(signals(trend(Events.POSITIVE, Kind.P))).noneMatch(signal -> signal.startsWith("above"));
        base(day, day.plusDays(27), "the four weeks after validation");

        Trend frozen = trend(Events.POSITIVE, Kind.P);
        assertThat(figure(frozen, "centre")).isEqualTo(0.05);
        assertThat(figure(frozen, "upper")).isCloseTo(0.2567607, within(1e-6));
        assertThat(signals(frozen)).contains("above-limit@6", "above-limit@8");
        assertThat(frozen.base().orElseThrow().reason()).isEqualTo("the four weeks after validation");

        base(day, day.plusDays(55), "two more months");
        assertThat(figure(trend(Events.POSITIVE, Kind.P), "centre")).isEqualTo(0.1);
        // a trend of one point has a base of its own
        Filter nozzle = Filter.ALL.withPlace(Optional.of(Quality.NOZZLE.place()));
        assertThat(quality.doors
                        .trending()
                        .of(new Asked(nozzle, Events.POSITIVE, Kind.P))
                        .base())
                .isEmpty();
    }

    private void base(LocalDate from, LocalDate to, String reason) {
        quality.doors
                .trending()
                .base(
                        new TrendBase(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                from,
                                to,
                                reason),
                        Quality.REVIEWER,
                        Optional.empty());
    }

    @Test
    void only_a_reviewer_freezes_limits_and_only_over_a_time_that_was_tested() {
        weeks(1);
        TrendBase empty = new TrendBase(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LocalDate.of(2020, 1, 1),
                LocalDate.of(2020, 2, 1),
                "none");
        assertThat(quality.refused(() -> quality.doors.trending().base(empty, Quality.REVIEWER, Optional.empty())))
                .isEqualTo("trend.nothing");
        assertThat(quality.refused(() -> quality.doors.trending().base(empty, Quality.RELEASER, Optional.empty())))
                .isNotEqualTo("trend.nothing");
    }

    /** Between events lie 9 good strips each time, or a week. */
    @Test
    void between_events_lie_good_strips_and_days() {
        weeks(1, 1, 1, 1);
        Trend gaps = trend(Events.POSITIVE, Kind.G);
        assertThat(gaps.marks()).extracting(Mark::strips).containsExactly(10L, 10L, 10L);
        assertThat(figure(gaps, "centre")).isEqualTo(9);
        assertThat(figure(trend(Events.POSITIVE, Kind.T), "centre")).isCloseTo(7, within(1e-9));
    }

    /**
     * Gaps frozen over the first five weeks: 9 good ones, 7 days. Upper limit of g 9 + 3√(9·10) = 37.4605 (Benneyan 2001); of t
     * nothing, for the gaps of the base do not differ: then every other time is outside.
     */
    @Test
    void limits_of_gaps_are_frozen_too() {
        weeks(1, 1, 1, 1, 1, 0, 0, 0, 0, 1, 0, 1);
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        assertThat(figure(trend(Events.POSITIVE, Kind.G), "centre")).isNotEqualTo(9);
        base(day, day.plusDays(34), "while every week had one");

        Trend good = trend(Events.POSITIVE, Kind.G);
        assertThat(good.base()).isPresent();
        assertThat(figure(good, "centre")).isEqualTo(9);
        assertThat(figure(good, "upper")).isCloseTo(37.4605, within(1e-4));
        assertThat(signals(good)).contains("above-limit@5");
        assertThat(good.marks()).allMatch(mark -> mark.result().isPresent());
        Trend days = trend(Events.POSITIVE, Kind.T);
        assertThat(figure(days, "centre")).isCloseTo(7, within(1e-9));
        assertThat(figure(days, "spread")).isCloseTo(0, within(1e-9));
        assertThat(signals(days)).contains("above-limit@5", "above-limit@6");
    }

    /** Mean of 1, 1, 1, 1 a week: c̄ ± 3√c̄ = 1 + 3 = 4 (NIST/SEMATECH e-Handbook §6.3.3.1). */
    @Test
    void counts_by_week_have_a_chart_of_their_own() {
        weeks(1, 1, 1, 1, 6);
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        base(day, day.plusDays(27), "in order");

        Trend counts = trend(Events.POSITIVE, Kind.C);
        assertThat(figure(counts, "centre")).isEqualTo(1);
        assertThat(figure(counts, "upper")).isEqualTo(4);
        assertThat(signals(counts)).contains("above-limit@5");
    }

    /** Of 0.1 with ten a week: σ 0.0948683; limits 0.1 + 3·0.0948683·√(0.2/1.8) = 0.1948683 (e-Handbook §6.3.2.4). */
    @Test
    void a_moving_average_tells_of_a_small_rise_that_stays() {
        weeks(1, 1, 1, 1, 3, 3, 3, 3);
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        base(day, day.plusDays(27), "in order");

        Trend average = trend(Events.POSITIVE, Kind.EWMA);
        assertThat(figure(average, "upper")).isCloseTo(0.1948683, within(1e-7));
        // 0.1 + 0.2·(1 − 0.8³) = 0.1976 with the third
        assertThat(signals(average)).contains("above-limit@7").doesNotContain("above-limit@6");
    }

    /** Laney's spread is the base period's, and not that of the weeks that are held against it. */
    @Test
    void limits_as_wide_as_the_weeks_differ_are_frozen_whole() {
        weeks(1, 0, 1, 0, 0, 9, 0, 9);
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        base(day, day.plusDays(27), "in order");
        double before = figure(trend(Events.POSITIVE, Kind.P_PRIME), "sigmaZ");
        weeks(1, 0, 1, 0, 0, 9, 0, 9, 10);

        assertThat(figure(trend(Events.POSITIVE, Kind.P_PRIME), "sigmaZ")).isEqualTo(before);
        assertThat(signals(trend(Events.POSITIVE, Kind.P_PRIME))).contains("above-limit@6", "above-limit@8");
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void too_little_is_no_chart_and_no_failure(Kind kind) {
        Trend nothing = trend(Events.POSITIVE, kind);
        assertThat(nothing.answer()).isEmpty();
        assertThat(nothing.lacking()).isPresent();
        assertThat(nothing.points()).isEmpty();
    }

    @Test
    void the_sums_of_a_rise_pass_their_interval() {
        weeks(IntStream.range(0, 20).map(week -> week < 10 ? 1 : 4).toArray());
        LocalDate day = MONDAY.atZone(TestSite.ZONE).toLocalDate();
        base(day, day.plusDays(69), "before the new product");
        assertThat(signals(trend(Events.POSITIVE, Kind.CUSUM))).anyMatch(signal -> signal.startsWith("sum-high@1"));
    }
}
