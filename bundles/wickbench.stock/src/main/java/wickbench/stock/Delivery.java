package wickbench.stock;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wickbench.api.lot.LotId;

/**
 * Boxes of one lot that came together.
 *
 * @param expiry the last day printed on the box
 * @param at when they came
 * @param insert the revision of the insert in the box
 * @param place the fridge they were put in
 * @param scan what was scanned, if it was
 */
public record Delivery(
        String kit,
        LotId lot,
        LocalDate expiry,
        int boxes,
        Instant at,
        Optional<String> insert,
        Optional<String> serial,
        Optional<LocalDate> produced,
        Optional<String> place,
        List<Companion> companions,
        Optional<String> scan) {
    public Delivery {
        companions = List.copyOf(companions);
    }
}
