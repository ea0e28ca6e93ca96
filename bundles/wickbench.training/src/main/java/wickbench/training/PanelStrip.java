package wickbench.training;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.journal.Hash;

/**
 * A strip of which somebody said beforehand what it shows; kept photographs make a panel that several rounds share.
 *
 * @param item its name in the panel, by which two rounds are compared
 * @param line of a near-limit strip: whether experts, blind and inside the window, saw the test line
 * @param photograph the kept picture of it, where one is read instead of the strip
 * @param contrast how much darker its test line is than the membrane, in percent, where that was measured
 */
public record PanelStrip(
        String item,
        StripClass kind,
        Optional<Boolean> line,
        Optional<Hash> photograph,
        Optional<BigDecimal> contrast) {
    /** More would be darker than black. */
    public static final BigDecimal MOST_CONTRAST = new BigDecimal(100);
}
