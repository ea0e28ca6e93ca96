package wickbench.api.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.method.Method;
import wickbench.api.method.Unit;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;

class SiteTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
    private static final ZoneId AUCKLAND = ZoneId.of("Pacific/Auckland");
    private static final List<Outcome> GRAVEST_FIRST =
            List.of(Outcome.POSITIVE_ABOVE_RANGE, Outcome.POSITIVE, Outcome.INVALID, Outcome.NEGATIVE);
    private static final Founding FOUNDING = new Founding(new StationId("bench-1"), VIENNA, OptionalLong.empty());

    @Test
    void the_profile_speaks_before_the_founding() {
        Site site = Site.of(Optional.of(profile(Unit.UG_PER_KG)), Optional.of(FOUNDING));
        assertThat(site.plant()).contains("Feldmark Mill");
        assertThat(site.zone()).isEqualTo(AUCKLAND);
        assertThat(site.outcomeOrder()).isEqualTo(GRAVEST_FIRST);
    }

    @Test
    void without_a_profile_the_founding_does() {
        Site site = Site.of(Optional.empty(), Optional.of(FOUNDING));
        assertThat(site.plant()).isEmpty();
        assertThat(site.zone()).isEqualTo(VIENNA);
        assertThat(site.outcomeOrder()).containsExactly(Outcome.values());
        assertThat(site.reviewDays()).isEqualTo(Site.REVIEW_DAYS);
    }

    @Test
    void review_days_are_days_of_the_site() {
        Site site = Site.of(Optional.of(profile(Unit.UG_PER_KG)), Optional.of(FOUNDING));
        // 1 March 13:00 in Auckland is still 1 March, a Sunday; midnight there is noon in UTC
        // 21 CFR 117.165(a)(4)(i): within 7 working days
        assertThat(site.reviewBy(Instant.parse("2026-03-01T00:00:00Z"))).isEqualTo(LocalDate.of(2026, 3, 10));
        assertThat(site.reviewBy(Instant.parse("2026-03-01T12:00:00Z"))).isEqualTo(LocalDate.of(2026, 3, 11));
    }

    @Test
    void a_review_is_late_when_its_last_day_is_over() {
        Site site = Site.of(Optional.of(profile(Unit.UG_PER_KG)), Optional.of(FOUNDING));
        for (LocalDate today = LocalDate.of(2026, 3, 1); today.getMonthValue() < 6; today = today.plusDays(1)) {
            Instant before = site.reviewOverdueBefore(today);
            assertThat(site.reviewBy(before.minusMillis(1))).isBefore(today);
            assertThat(site.reviewBy(before)).isAfterOrEqualTo(today);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "MG_PER_KG, UG_PER_KG, 0.25, 250",
        "UG_PER_KG, MG_PER_KG, 250, 0.250",
        "UG_PER_ML, NG_PER_ML, 0.34, 340",
        "MG_PER_L, UG_PER_ML, 7, 7",
        "NG_PER_ML, MG_PER_L, 1, 0.001",
        "G, G, 2.9, 2.9",
        "PH, PH, 6.8, 6.8"
    })
    void units_of_a_kind_differ_by_powers_of_ten(Unit from, Unit to, BigDecimal value, BigDecimal expected) {
        assertThat(from.convert(value, to)).isEqualByComparingTo(expected);
        assertThat(from.convert(value, to).scale()).isNotNegative();
        assertThat(to.convert(from.convert(value, to), from)).isEqualByComparingTo(value);
    }

    @ParameterizedTest
    @CsvSource({"MG_PER_KG, MG_PER_L", "UG_PER_SWAB, UG_PER_100_CM2", "PH, PIECE"})
    void what_measures_something_else_is_not_converted(Unit from, Unit to) {
        assertThatThrownBy(() -> from.convert(BigDecimal.ONE, to)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void levels_are_told_in_the_preferred_unit_and_others_stay() {
        Site site = Site.of(Optional.of(profile(Unit.UG_PER_KG, Unit.PIECE)), Optional.of(FOUNDING));
        Level food = level("2.5", Unit.MG_PER_KG);
        assertThat(site.shown(food).high().orElseThrow()).isEqualByComparingTo("2500");
        assertThat(site.shown(food).unit()).isEqualTo(Unit.UG_PER_KG);
        assertThat(site.shown(food).low()).isEmpty();
        for (Level other : List.of(level("0.34", Unit.UG_PER_ML), level("7", Unit.PH))) {
            assertThat(site.shown(other)).isEqualTo(other);
        }
    }

    private static Level level(String high, Unit unit) {
        return new Level(
                Optional.empty(),
                Optional.of(new BigDecimal(high)),
                unit,
                Method.Basis.TOTAL_PROTEIN,
                Optional.empty());
    }

    private static Profile profile(Unit... units) {
        return new Profile(
                "Feldmark Mill",
                AUCKLAND,
                List.of(units),
                Set.of(),
                Set.of(),
                BigDecimal.ZERO,
                7,
                GRAVEST_FIRST,
                2,
                Optional.empty(),
                ControlRule.NONE,
                Set.of());
    }
}
