package wickbench.stock;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.lot.LotId;

/**
 * What is done in the stock room; each act is one entry with who and why.
 *
 * <p>Each method throws {@link wickbench.api.check.Refusal} when a rule or a role says no, and
 * {@link wickbench.api.check.BadInput} when what is said cannot be; nothing is recorded then. Acts of one station follow one
 * another, so of two that take the last strip one is refused.
 */
@ProviderType
public interface Stockkeeping {

    /** Defines a kit, or defines it anew from now on. */
    Kit define(Kit kit, Actor by);

    /** Takes a delivery in; its lot awaits its check. */
    Lot receive(Delivery delivery, Actor by);

    /**
     * Judges the strips that were read to check a lot since its newest delivery, by the kit's rule.
     *
     * @return what was found; a pass makes the lot fit, a failure rejects it
     * @throws wickbench.api.check.Refusal {@code check.too-few} when fewer strips were read than the rule asks for
     */
    LotCheck check(LotId lot, Actor by);

    /** Says that a lot is used without a check, if its kit allows that. */
    Lot waive(LotId lot, String reason, Actor by);

    /**
     * Rejects a lot, also one that is used up; results read with it are touched.
     *
     * @param since from when on it is not trusted; empty means from its first delivery
     */
    Lot reject(LotId lot, Optional<Instant> since, String reason, Actor by);

    Lot quarantine(LotId lot, String reason, Actor by);

    /**
     * Decides on everything that holds a lot in quarantine.
     *
     * @param until the last day to which the decision shortens it; never later than the effective day
     */
    Lot release(LotId lot, Optional<LocalDate> until, String reason, Actor by);

    /**
     * Opens a pouch.
     *
     * @param with the lots of the parts used with it, by part, where they are others than came in its box
     */
    Lot open(LotId lot, Instant at, Map<String, LotId> with, Actor by);

    /**
     * Takes parts that no reading will count: spoilt, for training, given away.
     *
     * @throws wickbench.api.check.Refusal {@code lot.none-left} when fewer are left
     */
    Lot take(LotId lot, String part, BigDecimal amount, String reason, Actor by);

    /**
     * Keeps a count.
     *
     * @throws wickbench.api.check.BadInput when it differs from what should be there and no reason is given
     */
    Lot count(Count count, Actor by);

    /** Puts a lot into a fridge. */
    Lot place(LotId lot, String fridge, Instant at, Actor by);

    Lot usedUp(LotId lot, Actor by);

    Lot destroy(LotId lot, String reason, Actor by);

    /** Registers a device, or keeps its new calibration. */
    Device calibrated(Device device, Actor by);

    Device retire(String device, String reason, Actor by);

    /** Returns the readings that would count for a check of the lot now. */
    List<Use> checkReadings(LotId lot);
}
