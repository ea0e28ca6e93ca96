package wickbench.widgets;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Text;

/** What was typed into fields, as what it means; says below a field what is wrong with it. */
public final class Typed {
    private static final int LONGEST = 500;
    private static final int DIGITS = 9;
    private static final int DAY = "2026-03-01".length();

    private Typed() {}

    /** Returns the words of a field that must have some. */
    public static Optional<String> words(Field<Text> field) {
        field.clear();
        Optional<String> typed = some(field);
        if (typed.isEmpty() || typed.get().length() > LONGEST) {
            field.complain(WidgetWords.get("typed.words", LONGEST));
            return Optional.empty();
        }
        return typed;
    }

    /** Returns the words of a field that may stay empty. */
    public static Optional<String> some(Field<Text> field) {
        return Optional.of(field.control().getText().strip()).filter(text -> !text.isEmpty());
    }

    public static Optional<Integer> whole(Field<Text> field, int least) {
        field.clear();
        String typed = field.control().getText().strip();
        if (typed.matches("\\d{1," + DIGITS + "}") && Integer.parseInt(typed) >= least) {
            return Optional.of(Integer.parseInt(typed));
        }
        field.complain(WidgetWords.get("typed.whole", least));
        return Optional.empty();
    }

    /** Returns a quantity; a decimal comma is as good as a point. */
    public static Optional<BigDecimal> amount(Field<Text> field) {
        field.clear();
        String typed = field.control().getText().strip().replace(',', '.').replace('\u2212', '-');
        if (typed.matches("-?\\d{1,9}(\\.\\d{1,6})?")) {
            return Optional.of(new BigDecimal(typed));
        }
        field.complain(WidgetWords.get("typed.amount"));
        return Optional.empty();
    }

    public static Optional<LocalDate> date(Field<Text> field) {
        field.clear();
        try {
            return Optional.of(LocalDate.parse(field.control().getText().strip()));
        } catch (DateTimeException e) {
            field.complain(WidgetWords.get("typed.date"));
            return Optional.empty();
        }
    }

    /** Returns a time by the site's clocks, of a day alone its beginning; one that they do not show exactly once is asked for again. */
    public static Optional<Instant> time(Field<Text> field, ZoneId zone) {
        field.clear();
        try {
            String typed = field.control().getText().strip().replace(' ', 'T');
            LocalDateTime local =
                    typed.length() == DAY ? LocalDate.parse(typed).atStartOfDay() : LocalDateTime.parse(typed);
            List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
            if (offsets.size() == 1) {
                return Optional.of(local.toInstant(offsets.get(0)));
            }
            field.complain(WidgetWords.get("typed.once", zone));
        } catch (DateTimeException e) {
            field.complain(WidgetWords.get("typed.time"));
        }
        return Optional.empty();
    }
}
