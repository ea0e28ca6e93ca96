package wickbench.training;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * How bright it is where strips are read.
 *
 * @param lux illuminance where the strip lies
 */
public record BenchLight(String bench, Instant at, BigDecimal lux) {
    /** White light from here on is usual for reading strips: common practice, no published source. */
    public static final BigDecimal USUAL = new BigDecimal(500);

    public boolean dim() {
        return lux.compareTo(USUAL) < 0;
    }
}
