package wickbench.ledger;

import java.time.LocalDate;

/**
 * What the strips of one week said.
 *
 * @param monday its first day (ISO 8601)
 * @param strips how many there were in all
 * @param positives how many detected allergen, above the range or not
 */
public record Week(LocalDate monday, long strips, long positives, long invalids) {}
