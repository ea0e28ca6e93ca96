package wickbench.index;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.index.Row;

/** The row on which an answer stands. */
final class SqlRow implements Row {
    private final ResultSet answer;
    private final Map<String, Integer> columns;

    /** Takes the places of the columns by their names, which the driver would look up anew for each answer. */
    SqlRow(ResultSet answer, Map<String, Integer> columns) {
        this.answer = answer;
        this.columns = columns;
    }

    /** Returns where each column of an answer stands, by its name in lower case. */
    static Map<String, Integer> columns(ResultSet answer) throws SQLException {
        ResultSetMetaData told = answer.getMetaData();
        Map<String, Integer> columns = new HashMap<>();
        for (int at = 1; at <= told.getColumnCount(); at++) {
            columns.putIfAbsent(told.getColumnLabel(at).toLowerCase(Locale.ROOT), at);
        }
        return columns;
    }

    @Override
    public String text(String column) {
        return present(column, optionalText(column));
    }

    @Override
    public Optional<String> optionalText(String column) {
        return get(column, String.class);
    }

    @Override
    public long whole(String column) {
        return present(column, optionalWhole(column));
    }

    @Override
    public Optional<Long> optionalWhole(String column) {
        return get(column, Long.class);
    }

    @Override
    public BigDecimal decimal(String column) {
        return present(column, optionalDecimal(column));
    }

    @Override
    public Optional<BigDecimal> optionalDecimal(String column) {
        return get(column, BigDecimal.class);
    }

    @Override
    public boolean flag(String column) {
        return present(column, get(column, Boolean.class));
    }

    @Override
    public UUID uuid(String column) {
        return present(column, get(column, UUID.class));
    }

    @Override
    public Instant instant(String column) {
        return present(column, optionalInstant(column));
    }

    @Override
    public Optional<Instant> optionalInstant(String column) {
        return get(column, Instant.class);
    }

    @Override
    public Optional<LocalDate> optionalDate(String column) {
        return get(column, LocalDate.class);
    }

    private <T> Optional<T> get(String column, Class<T> type) {
        try {
            Integer at = columns.get(column);
            return Optional.ofNullable(at == null ? answer.getObject(column, type) : answer.getObject(at, type));
        } catch (SQLException e) {
            throw SqlFailure.of("column " + column, e);
        }
    }

    private static <T> T present(String column, Optional<T> value) {
        return value.orElseThrow(() -> new IllegalStateException("column " + column + " is empty"));
    }
}
