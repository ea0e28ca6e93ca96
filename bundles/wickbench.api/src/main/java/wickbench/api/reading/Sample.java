package wickbench.api.reading;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What was sampled, where and why.
 *
 * @param code the label on the tube
 * @param place sampling point or area, by the site's name
 * @param line production line
 * @param batch batch or product made
 * @param reasonText the site's own words beside the reason
 * @param area swabbed area in cm², where it differs from the method's
 * @param dilution how many times thinner the liquid was made beyond the method's own steps; 1 is undiluted
 */
public record Sample(
        String code,
        String place,
        Optional<String> line,
        Optional<String> batch,
        Optional<Reason> reason,
        Optional<String> reasonText,
        Optional<Visual> visual,
        Optional<BigDecimal> area,
        BigDecimal dilution,
        Optional<RunControl> control) {
    public Sample {
        if (dilution.compareTo(BigDecimal.ONE) < 0) {
            throw new IllegalArgumentException("expected a dilution from 1 on, found " + dilution.toPlainString());
        }
        if (area.isPresent() && area.get().signum() <= 0) {
            throw new IllegalArgumentException(
                    "expected an area above 0 cm², found " + area.get().toPlainString());
        }
    }
}
