package wickbench.stock.gs1;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** What a label of our own says as a GS1 element string, which {@link ElementStrings} reads back without a doubt. */
public final class LabelText {
    private static final DateTimeFormatter SIX_DIGITS = DateTimeFormatter.ofPattern("uuMMdd", Locale.ROOT);

    private LabelText() {}

    /**
     * Returns trade item, lot and last day; empty when the standard has no room for such a lot number.
     *
     * <p>The lot stands in the middle and is ended by a separator, so that no reader can take what follows for a part of it.
     */
    public static Optional<String> of(String gtin, String lot, LocalDate expiry) {
        return Identifier.LOT.allows(lot)
                ? Optional.of(Identifier.GTIN.digits()
                        + gtin
                        + Identifier.LOT.digits()
                        + lot
                        + ElementStrings.SEPARATOR
                        + Identifier.EXPIRY.digits()
                        + SIX_DIGITS.format(expiry))
                : Optional.empty();
    }
}
