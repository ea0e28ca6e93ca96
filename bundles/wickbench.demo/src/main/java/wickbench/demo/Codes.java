package wickbench.demo;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Labels of tubes and batches, numbered day by day. */
final class Codes {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuMMdd", Locale.ROOT);
    private static final String SHIFTS = "EL";
    private final Map<String, Integer> used = new HashMap<>();

    String next(Plant.Line line, LocalDate day) {
        String start = line.id() + "-" + DAY.format(day);
        return start + String.format(Locale.ROOT, "-%02d", used.merge(start, 1, Integer::sum));
    }

    /** Returns the batch that a product's shift makes, such as {@code HC-260311-E}. */
    static String batch(Plant.Product product, LocalDate day, int shift) {
        StringBuilder initials = new StringBuilder();
        for (String word : product.id().split("-")) {
            initials.append(Character.toUpperCase(word.charAt(0)));
        }
        return initials + "-" + DAY.format(day) + "-" + SHIFTS.charAt(shift);
    }
}
