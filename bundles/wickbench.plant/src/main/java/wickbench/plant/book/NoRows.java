package wickbench.plant.book;

import java.util.List;
import java.util.function.Function;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;

/** The rows of a home in which nothing was recorded yet. */
final class NoRows implements Rows {
    @Override
    public int write(String sql, Object... values) {
        throw new IllegalStateException("nothing is written while asking");
    }

    @Override
    public <T> List<T> read(String sql, Function<Row, T> shape, Object... values) {
        return List.of();
    }
}
