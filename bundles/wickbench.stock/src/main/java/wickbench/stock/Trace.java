package wickbench.stock;

import java.util.List;
import java.util.Optional;

/**
 * What hangs on a lot, or on what a result hangs.
 *
 * @param lot as it stands now; empty when the stock room never received it
 * @param uses every result read with it, oldest first; of one result, that alone
 */
public record Trace(Optional<Lot> lot, List<Use> uses) {
    public Trace {
        uses = List.copyOf(uses);
    }
}
