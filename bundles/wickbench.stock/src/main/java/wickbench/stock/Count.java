package wickbench.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;

/**
 * What somebody found on the shelf.
 *
 * @param pouches sealed ones
 * @param loose strips in opened pouches
 * @param others how much of each further part, those that were counted
 * @param reason how a difference is explained; needed where there is one
 */
public record Count(
        LotId lot, Instant at, int pouches, int loose, Map<String, BigDecimal> others, Optional<String> reason) {
    public Count {
        others = Map.copyOf(others);
    }
}
