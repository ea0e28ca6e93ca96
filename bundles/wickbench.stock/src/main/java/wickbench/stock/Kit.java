package wickbench.stock;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A kit as this site keeps it; the schema is {@code docs/formats/kit-1.schema.json}.
 *
 * @param name as the methods name it
 * @param gtins the trade item numbers (14 digits) by which a scanned box is known
 * @param pouches in a box
 * @param boxDays how many days a lot may be used once its first box was opened; empty when the label alone governs
 * @param pouchHours how many hours an opened pouch may be used; empty when it is not limited
 * @param mayMix whether strips and liquids of different lots may be used together
 * @param insertRevision the revision of the insert by which the site's methods were written, where no issued method states it
 */
public record Kit(
        String name,
        List<String> gtins,
        int pouches,
        List<Part> parts,
        Optional<Integer> boxDays,
        Optional<Integer> pouchHours,
        boolean mayMix,
        Storage storage,
        CheckRule check,
        Supply supply,
        Optional<String> insertRevision) {
    public Kit {
        gtins = List.copyOf(gtins);
        parts = List.copyOf(parts);
    }

    /** Returns the part that is the strip. */
    public Part strip() {
        return parts.stream().filter(Part::strip).findFirst().orElseThrow();
    }

    public Optional<Part> part(String part) {
        return parts.stream().filter(each -> each.name().equals(part)).findFirst();
    }

    /** Returns how many strips a box holds. */
    public long stripsInBox() {
        return strip().inBox(pouches).longValueExact();
    }

    /**
     * How it is kept, with what may pass without a decision.
     *
     * @param low °C, this end included
     * @param high °C, this end included
     * @param warmMinutes the longest time above {@code high}
     * @param coldMinutes the longest time below {@code low}; freezing has no allowance
     * @param gapMinutes the longest time without a reading
     */
    public record Storage(BigDecimal low, BigDecimal high, int warmMinutes, int coldMinutes, int gapMinutes) {}

    /**
     * How a delivery is checked before the lot is fit.
     *
     * @param blanks how many blank strips at least
     * @param lowPositives how many low-positive strips at least
     * @param mostWrong how many of them may be wrong: a blank Positive, a low positive Negative
     * @param mostInvalid how many may be Invalid
     * @param waivable whether the check may be waived; each waiver is an entry
     */
    public record CheckRule(int blanks, int lowPositives, int mostWrong, int mostInvalid, boolean waivable) {}

    /**
     * How it is bought.
     *
     * @param leadDays from order to delivery
     * @param leadDeviation the standard deviation of that, in days
     * @param service the chance not to run out in one delivery time, between 0 and 1
     */
    public record Supply(int leadDays, int leadDeviation, BigDecimal service) {}
}
