package wickbench.api.index;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The rows of one schema within one transaction.
 *
 * <p>Values may be texts, numbers ({@code Integer}, {@code Long}, {@code BigDecimal}), {@code Boolean}, {@code UUID},
 * {@code Instant}, {@code LocalDate}, or {@code Optional} of those (empty is NULL); a question mark stands for each.
 */
@ProviderType
public interface Rows {

    /** Changes rows and returns how many. */
    int write(String sql, Object... values);

    /** Reads rows in the order of the query. */
    <T> List<T> read(String sql, Function<Row, T> shape, Object... values);

    /** Reads the first row, if there is one. */
    default <T> Optional<T> first(String sql, Function<Row, T> shape, Object... values) {
        return read(sql, shape, values).stream().findFirst();
    }
}
