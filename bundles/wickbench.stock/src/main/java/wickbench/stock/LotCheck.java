package wickbench.stock;

import java.util.List;
import java.util.UUID;

/**
 * What the check of a lot found.
 *
 * @param blanks how many blank strips were valid
 * @param lowPositives how many low-positive strips were valid
 * @param wrong how many of those were not as they must be
 * @param invalid how many strips proved nothing
 * @param readings the results it rests on
 */
public record LotCheck(int blanks, int lowPositives, int wrong, int invalid, boolean passed, List<UUID> readings) {
    public LotCheck {
        readings = List.copyOf(readings);
    }
}
