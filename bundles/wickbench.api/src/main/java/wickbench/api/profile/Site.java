package wickbench.api.profile;

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
 * @param reviewDays within how many days a result is reviewed; empty where nobody has said so
 * @param outcomeOrder all outcomes, in the order in which lists tell them
 */
public record Site(
        Optional<String> plant,
        ZoneId zone,
        List<Unit> units,
        Optional<Integer> reviewDays,
        List<Outcome> outcomeOrder) {
    public Site {
        units = List.copyOf(units);
        outcomeOrder = List.copyOf(outcomeOrder);
    }

    /** Returns the site of a profile, or of a station that has none; before it is founded, times are this computer's. */
    public static Site of(Optional<Profile> profile, Optional<Founding> founding) {
        return profile.map(held -> new Site(
                        Optional.of(held.plant()),
                        held.zone(),
                        held.units(),
                        Optional.of(held.reviewDays()),
                        held.outcomeOrder()))
                .orElseGet(() -> new Site(
                        Optional.empty(),
                        founding.map(Founding::zone).orElseGet(ZoneId::systemDefault),
                        List.of(),
                        Optional.empty(),
                        List.of(Outcome.values())));
    }

    /** Returns an interval in the unit that the site prefers. */
    public Level shown(Level level) {
        return level.in(preferred(level.unit()));
    }

    /** Returns the last day on which something recorded then is reviewed in time; empty where nobody has said so. */
    public Optional<LocalDate> reviewBy(Instant recorded) {
        return reviewDays.map(days -> recorded.atZone(zone).toLocalDate().plusDays(days));
    }

    private Unit preferred(Unit unit) {
        return units.stream()
                .filter(other -> other.kind() == unit.kind() && unit.converts())
                .findFirst()
                .orElse(unit);
    }
}
