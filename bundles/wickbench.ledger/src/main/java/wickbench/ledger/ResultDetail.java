package wickbench.ledger;

import java.util.List;
import wickbench.api.reading.RecordedReading;

/**
 * One result in full.
 *
 * @param reading the statement that counts
 * @param history every statement, oldest first
 */
public record ResultDetail(ResultRow row, RecordedReading reading, List<Statement> history) {
    public ResultDetail {
        history = List.copyOf(history);
    }
}
