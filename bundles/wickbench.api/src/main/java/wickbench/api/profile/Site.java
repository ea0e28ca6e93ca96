package wickbench.api.profile;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Founding;
import wickbench.api.method.Unit;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;

/**
 * What pages and reports show of the site: as its profile says, or as the station was founded where there is none.
 *
 * @param plant its name; empty without a profile
 * @param zone by which times are told and days begin
 * @param units in which quantities are shown, at most one of a kind
 * @param reviewDays within how many working days a result is reviewed
 * @param outcomeOrder all outcomes, in the order in which lists tell them
 */
public record Site(Optional<String> plant, ZoneId zone, List<Unit> units, int reviewDays, List<Outcome> outcomeOrder) {

    /** Working days that hold without a profile: 21 CFR 117.165(a)(4)(i), within 7 working days after the record was made. */
    public static final int REVIEW_DAYS = 7;

    public Site {
        units = List.copyOf(units);
        outcomeOrder = List.copyOf(outcomeOrder);
    }

    /** Returns the site of a profile, or of a station that has none; before it is founded, times are this computer's. */
    public static Site of(Optional<Profile> profile, Optional<Founding> founding) {
        return profile.map(held -> new Site(
                        Optional.of(held.plant()), held.zone(), held.units(), held.reviewDays(), held.outcomeOrder()))
                .orElseGet(() -> new Site(
                        Optional.empty(),
                        founding.map(Founding::zone).orElseGet(ZoneId::systemDefault),
                        List.of(),
                        REVIEW_DAYS,
                        List.of(Outcome.values())));
    }

    /** Returns an interval in the unit that the site prefers. */
    public Level shown(Level level) {
        return level.in(preferred(level.unit()));
    }

    /**
     * Returns the last day on which something recorded then is reviewed in time.
     *
     * <p>Counted are Mondays to Fridays. Holidays are not known, so where there is one the day named is early, never late.
     */
    public LocalDate reviewBy(Instant recorded) {
        return reviewBy(recorded.atZone(zone).toLocalDate());
    }

    private LocalDate reviewBy(LocalDate recorded) {
        LocalDate day = recorded;
        for (int left = reviewDays; left > 0; ) {
            day = day.plusDays(1);
            left -= working(day) ? 1 : 0;
        }
        return day;
    }

    /** Returns the instant before which a thing was recorded whose review is late on a day. */
    public Instant reviewOverdueBefore(LocalDate today) {
        LocalDate day = today;
        while (!reviewBy(day.minusDays(1)).isBefore(today)) {
            day = day.minusDays(1);
        }
        return day.atStartOfDay(zone).toInstant();
    }

    private static boolean working(LocalDate day) {
        return day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0;
    }

    private Unit preferred(Unit unit) {
        return units.stream()
                .filter(other -> other.kind() == unit.kind() && unit.converts())
                .findFirst()
                .orElse(unit);
    }
}
