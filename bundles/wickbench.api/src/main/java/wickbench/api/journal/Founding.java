package wickbench.api.journal;

import java.time.ZoneId;
import java.util.OptionalLong;

/**
 * How a station began: the content of its first entry.
 *
 * @param station its name
 * @param zone the site's time zone, by which labels expire and sheets without offset are read
 * @param simulatedSeed present when the home has a simulated clock; shown on every page and report for good
 */
public record Founding(StationId station, ZoneId zone, OptionalLong simulatedSeed) {

    /** Returns a first station in the given zone. */
    public static Founding defaults(ZoneId zone) {
        return new Founding(new StationId("station-1"), zone, OptionalLong.empty());
    }

    public boolean simulated() {
        return simulatedSeed.isPresent();
    }
}
