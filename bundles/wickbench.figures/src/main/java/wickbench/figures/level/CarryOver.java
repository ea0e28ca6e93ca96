package wickbench.figures.level;

import java.math.BigDecimal;
import wickbench.figures.NoAnswer;

/**
 * What a surface or a rinse leaves in the next product (common practice; built as the carry-over limits for drugs: Fourman and Mullen,
 * Pharm. Technol. 17(4):54, 1993).
 *
 * @param totalMg what reaches the product, in mg
 * @param batch mg/kg if it spreads over the whole batch
 * @param firstOff mg/kg if all of it lands in the first portion off the line; this one decides
 */
public record CarryOver(BigDecimal totalMg, BigDecimal batch, BigDecimal firstOff) {

    /**
     * The masses that it lands in.
     *
     * @param batchKg the whole batch, in kg
     * @param firstOffKg the first portion, in kg, at most the batch
     */
    public record Masses(BigDecimal batchKg, BigDecimal firstOffKg) {
        public Masses {
            Decimals.positive("batch", batchKg);
            Decimals.positive("first-off", firstOffKg);
            if (firstOffKg.compareTo(batchKg) > 0) {
                throw NoAnswer.of(
                        "first-off", "carry-over.first-off", firstOffKg.toPlainString(), batchKg.toPlainString());
            }
        }
    }

    /**
     * The surface that was swabbed.
     *
     * @param areaM2 the area that touches the product, in m²
     * @param recovery the share that a swab picks up, above 0 to 1; stated, never assumed to be all
     * @param transfer the share of what lies there that reaches the product, above 0 to 1
     */
    public record Surface(BigDecimal areaM2, BigDecimal recovery, BigDecimal transfer) {
        public Surface {
            Decimals.positive("area", areaM2);
            Decimals.share("recovery", recovery);
            Decimals.share("transfer", transfer);
        }

        /** µg that reach the product for each µg/100 cm² found. */
        private BigDecimal reach() {
            return Decimals.over(areaM2.multiply(Decimals.HUNDRED).multiply(transfer), recovery);
        }
    }

    /**
     * Returns q/100 × A/recovery × transfer/1000 ÷ mass.
     *
     * @param found q, in µg/100 cm²
     */
    public static CarryOver ofSwab(BigDecimal found, Surface surface, Masses masses) {
        Decimals.notNegative("swab", found);
        return of(Decimals.over(found.multiply(surface.reach()), Decimals.THOUSAND), masses);
    }

    /**
     * Returns concentration × hold-up ÷ mass; the rinse that was drained reaches no product.
     *
     * @param mgPerL what the last rinse holds, in mg/L
     * @param holdUpL how much of it stays in the line, in L
     */
    public static CarryOver ofRinse(BigDecimal mgPerL, BigDecimal holdUpL, Masses masses) {
        Decimals.notNegative("rinse", mgPerL);
        Decimals.positive("hold-up", holdUpL);
        return of(mgPerL.multiply(holdUpL), masses);
    }

    private static CarryOver of(BigDecimal total, Masses masses) {
        return new CarryOver(total, Decimals.over(total, masses.batchKg()), Decimals.over(total, masses.firstOffKg()));
    }

    /**
     * Returns the swab result, in µg/100 cm², at which a mass of product reaches the level.
     *
     * @param massKg the batch, or the first portion, in kg
     */
    public static BigDecimal swabLimit(ActionLevel level, Surface surface, BigDecimal massKg) {
        Decimals.positive("mass", massKg);
        return Decimals.over(level.mgPerKg().multiply(massKg).multiply(Decimals.THOUSAND), surface.reach());
    }

    /** Returns the rinse result, in mg/L, at which a mass of product reaches the level. */
    public static BigDecimal rinseLimit(ActionLevel level, BigDecimal holdUpL, BigDecimal massKg) {
        Decimals.positive("mass", massKg);
        Decimals.positive("hold-up", holdUpL);
        return Decimals.over(level.mgPerKg().multiply(massKg), holdUpL);
    }
}
