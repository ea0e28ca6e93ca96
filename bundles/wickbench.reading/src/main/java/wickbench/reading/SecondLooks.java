package wickbench.reading;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.journal.Hash;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.SecondLook;
import wickbench.api.reading.Strip;

/** Which strips a second reader reads too, blind to the first. */
public final class SecondLooks {
    private static final int BYTES = 8;

    private SecondLooks() {}

    /** Returns why a second reader is asked for; a faint line that tells of the allergen goes before the draw. */
    public static Optional<SecondLook> of(Strip seen, boolean drawn) {
        if (faint(seen, LineRole.TEST) || faint(seen, LineRole.HOOK)) {
            return Optional.of(SecondLook.FAINT);
        }
        boolean negative = new Lines(seen, Optional.empty()).outcome() == Outcome.NEGATIVE;
        return negative && drawn ? Optional.of(SecondLook.DRAWN) : Optional.empty();
    }

    /**
     * Tells whether a strip is drawn: the first 64 bits of a SHA-256 over its id, as a number from 0 to below 1, lie below the
     * share.
     *
     * @param share from 0, none, to 1, all
     */
    public static boolean drawn(UUID strip, BigDecimal share) {
        byte[] hash = Hash.ofContent("second-reader\n" + strip).bytes();
        BigInteger bits = new BigInteger(1, Arrays.copyOf(hash, BYTES));
        BigDecimal limit = share.multiply(new BigDecimal(BigInteger.ONE.shiftLeft(BYTES * Byte.SIZE)));
        return new BigDecimal(bits).compareTo(limit) < 0;
    }

    private static boolean faint(Strip strip, LineRole role) {
        return strip.lines().get(role) == Seen.FAINT;
    }
}
