package wickbench.stock;

import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.lot.LotId;

/** A part that came in the box with a lot number, and perhaps a date, of its own. */
public record Companion(String part, LotId lot, Optional<LocalDate> expiry) {}
