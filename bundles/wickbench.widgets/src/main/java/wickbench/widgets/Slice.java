package wickbench.widgets;

import java.util.List;

/**
 * Some rows in order.
 *
 * @param more whether others follow
 */
public record Slice<T>(List<T> rows, boolean more) {
    public Slice {
        rows = List.copyOf(rows);
    }
}
