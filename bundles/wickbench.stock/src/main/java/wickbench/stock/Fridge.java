package wickbench.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A fridge with what is known of it.
 *
 * @param id the site's own
 * @param low of the range it is to keep, °C
 * @param high of that range, °C
 * @param logger the device that measures in it
 * @param until the last reading there is
 * @param lots what lies in it now
 */
public record Fridge(
        String id,
        String name,
        BigDecimal low,
        BigDecimal high,
        Optional<String> logger,
        Optional<Instant> until,
        List<String> lots) {
    public Fridge {
        lots = List.copyOf(lots);
    }
}
