package wickbench.api.lot;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What was known of a lot at an instant, to be copied into a reading.
 *
 * @param kit which kit it is
 * @param labelExpiry the last day printed on the label; it includes that local day
 * @param effectiveExpiry the earliest of label, in-use life and storage decisions
 * @param state in words of the stock bundle, for example {@code fit}
 */
public record LotFacts(
        LotId lot,
        String kit,
        LocalDate labelExpiry,
        LocalDate effectiveExpiry,
        String state,
        Optional<String> insertRevision) {}
