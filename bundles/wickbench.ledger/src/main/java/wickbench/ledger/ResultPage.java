package wickbench.ledger;

import java.util.List;

/**
 * Some results in order.
 *
 * @param more whether others follow
 */
public record ResultPage(List<ResultRow> rows, boolean more) {
    public ResultPage {
        rows = List.copyOf(rows);
    }
}
