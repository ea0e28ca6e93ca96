package wickbench.report.pdf;

import java.util.List;
import java.util.Optional;

/**
 * What stands on every page around the report itself.
 *
 * @param plant the plant's name, or that of the station
 * @param printed when it was printed, in words
 * @param simulated the mark of a home whose clock is simulated
 * @param seals one for each station drawn from
 */
public record Chrome(String plant, String printed, Optional<String> simulated, List<StationSeal> seals) {
    public Chrome {
        seals = List.copyOf(seals);
    }
}
