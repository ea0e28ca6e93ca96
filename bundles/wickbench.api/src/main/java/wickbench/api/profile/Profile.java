package wickbench.api.profile;

import java.math.BigDecimal;
import java.time.Period;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.method.Unit;
import wickbench.api.reading.Outcome;

/**
 * A site's profile; the schema is {@code docs/formats/profile-1.schema.json}.
 *
 * @param plant its name, as reports print it
 * @param zone by which labels expire and sheets without offset are read
 * @param units in which quantities are preferred, at most one of a kind
 * @param requiredChecks neighbours that must have a say in every start: {@code stock}, {@code training}, …
 * @param requiredSignatures kinds of entry that are refused unsigned: {@code method.issued}, …
 * @param doubleRead which part of the strips a second person reads too, from 0 to 1
 * @param reviewDays within how many working days a result is reviewed
 * @param outcomeOrder all outcomes, in the order in which lists and reports tell them
 * @param retentionYears how long records are kept with the names that belong to them
 * @param passphraseDays after how many days a passphrase must be replaced; empty where none ages
 * @param runControls which run controls are asked for, and how often
 * @param waivedLotChecks kits, by the site's names, whose lots may be used without the check that every delivery else needs
 */
public record Profile(
        String plant,
        ZoneId zone,
        List<Unit> units,
        Set<String> requiredChecks,
        Set<String> requiredSignatures,
        BigDecimal doubleRead,
        int reviewDays,
        List<Outcome> outcomeOrder,
        int retentionYears,
        Optional<Integer> passphraseDays,
        ControlRule runControls,
        Set<String> waivedLotChecks) {

    /** Years that hold without a profile: 21 CFR 117.315(a)(1), at least 2 years after a record was prepared. */
    public static final int LEAST_RETENTION_YEARS = 2;

    public Profile {
        units = List.copyOf(units);
        requiredChecks = Set.copyOf(requiredChecks);
        requiredSignatures = Set.copyOf(requiredSignatures);
        outcomeOrder = List.copyOf(outcomeOrder);
        waivedLotChecks = Set.copyOf(waivedLotChecks);
    }

    public Period retention() {
        return Period.ofYears(retentionYears);
    }
}
