package wickbench.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import wickbench.api.lot.LotId;

/**
 * A lot as it stood at an instant.
 *
 * @param label the earliest last day printed on strips and companions; it includes that local day
 * @param effective the earliest of label, opened + in-use life and what decisions shortened it to
 * @param why what made the effective day: {@code label}, {@code opened} or {@code decided}
 * @param received when its first delivery came
 * @param checked when its newest delivery passed its check, or the check was waived
 * @param waived whether that was a waiver
 * @param waivable whether its kit or the site's profile lets somebody waive the check
 * @param opened when its first pouch was opened
 * @param pouch when the oldest pouch that still holds strips was opened
 * @param place the fridge it lies in
 * @param insert the revision of the insert that lay in the newest delivery
 * @param inserts the revisions by which the methods of its kit are written; more than one where they differ
 * @param companions lots of liquids that came in its box
 * @param quarantines what keeps it in quarantine, oldest first
 * @param parts what is left, the strip first
 * @param unrecordedPouches how many pouches must have been opened although nobody said so
 * @param clashes what was claimed of it and cannot be; until it is settled the most cautious claim holds
 */
public record Lot(
        LotId id,
        Kit kit,
        LotState state,
        LocalDate label,
        LocalDate effective,
        String why,
        Instant received,
        Optional<Instant> checked,
        boolean waived,
        boolean waivable,
        Optional<Instant> opened,
        Optional<Instant> pouch,
        Optional<String> place,
        Optional<String> insert,
        List<String> inserts,
        List<Companion> companions,
        List<Quarantine> quarantines,
        List<Balance> parts,
        long unrecordedPouches,
        List<Clash> clashes) {
    public Lot {
        inserts = List.copyOf(inserts);
        companions = List.copyOf(companions);
        quarantines = List.copyOf(quarantines);
        parts = List.copyOf(parts);
        clashes = List.copyOf(clashes);
    }

    public Balance strips() {
        return parts.get(0);
    }

    /** Returns how many whole pouches are sealed. */
    public long sealedPouches() {
        BigDecimal each = strips().part().perPouch();
        return each.signum() == 0
                ? 0
                : strips().sealed().divideToIntegralValue(each).longValueExact();
    }

    /** Returns how many days it may still be used after this one; below 0 when it is out of date. */
    public long daysLeft(LocalDate today) {
        return ChronoUnit.DAYS.between(today, effective);
    }

    public boolean expired(LocalDate today) {
        return today.isAfter(effective);
    }

    /** Tells whether a strip of it may be started on this day, as far as the lot goes. */
    public boolean usable(LocalDate today) {
        return state == LotState.FIT && !expired(today);
    }

    /** Tells whether the insert in the box is another than one by which a method was written. */
    public boolean otherInsert() {
        return insert.filter(found -> inserts.stream().anyMatch(written -> !written.equals(found)))
                .isPresent();
    }
}
