package wickbench.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.check.Complaint;

/** The cells of one row of a sheet, taken by column; what is wrong with them is collected. */
final class SheetCells {
    private static final int MOST_DIGITS = 15;

    private final String source;
    private final int line;
    private final SheetColumns columns;
    private final List<String> cells;
    private final SiteTime siteTime;
    private final boolean decimalComma;
    private final List<Complaint> complaints;

    SheetCells(
            String source,
            int line,
            SheetColumns columns,
            List<String> cells,
            SiteTime siteTime,
            boolean decimalComma,
            List<Complaint> complaints) {
        this.source = source;
        this.line = line;
        this.columns = columns;
        this.cells = cells;
        this.siteTime = siteTime;
        this.decimalComma = decimalComma;
        this.complaints = complaints;
    }

    Optional<String> text(String column) {
        return Optional.of(columns.cell(cells, column)).filter(text -> !text.isEmpty());
    }

    /** Takes a cell that must not be blank and turns it into a value. */
    <T> Optional<T> asked(String column, Function<String, T> parse) {
        if (text(column).isEmpty()) {
            complain(column, BenchWords.get("cell.blank"));
        }
        return optional(column, parse);
    }

    /** Takes a cell that may be blank; the message of an {@link IllegalArgumentException} becomes the complaint. */
    <T> Optional<T> optional(String column, Function<String, T> parse) {
        return text(column).flatMap(text -> {
            try {
                return Optional.of(parse.apply(text));
            } catch (IllegalArgumentException e) {
                complain(column, e.getMessage());
                return Optional.empty();
            }
        });
    }

    Optional<Instant> time(String column) {
        return optional(column, siteTime::instant);
    }

    Optional<BigDecimal> decimal(String column) {
        return optional(column, this::decimalOf);
    }

    /**
     * Reads a decimal as this sheet writes it.
     *
     * @throws IllegalArgumentException when it is none, or has too many digits to be kept exactly
     */
    BigDecimal decimalOf(String text) {
        String plain = decimalComma ? text.replace(',', '.') : text;
        if (!plain.matches("-?\\d{1,30}(\\.\\d{1,30})?")) {
            throw new IllegalArgumentException(BenchWords.get("cell.not-a-number", text));
        }
        BigDecimal value = new BigDecimal(plain).stripTrailingZeros();
        if (value.precision() > MOST_DIGITS) {
            throw new IllegalArgumentException(BenchWords.get("cell.many-digits", text, MOST_DIGITS));
        }
        return value;
    }

    List<String> preChecks() {
        return columns.preChecks();
    }

    void complain(String column, String text) {
        complaints.add(Complaint.at(source, line, column, text));
    }

    int line() {
        return line;
    }

    String source() {
        return source;
    }
}
