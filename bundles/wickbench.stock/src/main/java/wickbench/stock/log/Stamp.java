package wickbench.stock.log;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickbench.stock.LogShape.DateOrder;

/**
 * A time as a logger writes it, not yet read in an order.
 *
 * @param first the first number of the date; second and third likewise
 * @param offset what stands behind the time, if anything does
 */
record Stamp(
        int first,
        int second,
        int third,
        boolean yearFirst,
        Optional<LocalTimeOfDay> clock,
        Optional<ZoneOffset> offset) {
    private static final Pattern DATE = Pattern.compile("(\\d{1,4})([-./])(\\d{1,2})\\2(\\d{1,4})(?:[T ,]+(.+))?");
    private static final Pattern CLOCK = Pattern.compile(
            "(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9}))?)? ?([aApP]\\.?[mM]\\.?)?\\s?(Z|[+-]\\d{2}:?\\d{2})?");
    private static final int YEAR_DIGITS = 4;
    private static final int CENTURY = 2000;
    private static final int NOON = 12;

    /** A time of day to the millisecond. */
    record LocalTimeOfDay(int hour, int minute, int second, int milli) {}

    static Optional<Stamp> read(String date, String clock) {
        Matcher matcher = DATE.matcher(date);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        boolean yearFirst = matcher.group(1).length() == YEAR_DIGITS;
        boolean yearLast =
                matcher.group(4).length() == YEAR_DIGITS || matcher.group(4).length() == 2;
        String time = clock.isEmpty() ? matcher.group(5) : clock;
        if (yearFirst == (matcher.group(4).length() == YEAR_DIGITS) || !yearFirst && !yearLast) {
            return Optional.empty();
        }
        return time == null
                ? Optional.of(new Stamp(
                        number(matcher, 1),
                        number(matcher, 3),
                        number(matcher, 4),
                        yearFirst,
                        Optional.empty(),
                        Optional.empty()))
                : timed(matcher, yearFirst, time);
    }

    private static Optional<Stamp> timed(Matcher date, boolean yearFirst, String time) {
        Matcher clock = CLOCK.matcher(time.strip());
        if (!clock.matches()) {
            return Optional.empty();
        }
        Optional<ZoneOffset> offset = Optional.ofNullable(clock.group(6)).map(ZoneOffset::of);
        return hour(clock)
                .map(hour -> new LocalTimeOfDay(hour, number(clock, 2), number(clock, 3), milli(clock.group(4))))
                .map(read -> new Stamp(
                        number(date, 1), number(date, 3), number(date, 4), yearFirst, Optional.of(read), offset));
    }

    private static Optional<Integer> hour(Matcher clock) {
        int hour = number(clock, 1);
        String half = clock.group(5);
        if (half == null) {
            return Optional.of(hour);
        }
        boolean afternoon = half.charAt(0) == 'p' || half.charAt(0) == 'P';
        return hour < 1 || hour > NOON ? Optional.empty() : Optional.of(hour % NOON + (afternoon ? NOON : 0));
    }

    private static int milli(String fraction) {
        return fraction == null ? 0 : Integer.parseInt((fraction + "00").substring(0, 3));
    }

    private static int number(Matcher matcher, int group) {
        String digits = matcher.group(group);
        return digits == null ? 0 : Integer.parseInt(digits);
    }

    /** Returns the one order in which this can be a date; empty when two can. */
    Optional<DateOrder> order() {
        if (yearFirst) {
            return Optional.of(DateOrder.YMD);
        }
        if (first > NOON) {
            return Optional.of(DateOrder.DMY);
        }
        return second > NOON ? Optional.of(DateOrder.MDY) : Optional.empty();
    }

    /** Returns the time by the clock of the logger; empty when there is no such day or time. */
    Optional<LocalDateTime> time(DateOrder order) {
        if (yearFirst != (order == DateOrder.YMD) || clock.isEmpty()) {
            return Optional.empty();
        }
        int year = yearFirst ? first : third < 100 ? CENTURY + third : third;
        int month = order == DateOrder.MDY ? first : second;
        int day = yearFirst ? third : order == DateOrder.DMY ? first : second;
        LocalTimeOfDay at = clock.get();
        try {
            return Optional.of(
                    LocalDateTime.of(year, month, day, at.hour(), at.minute(), at.second(), at.milli() * 1_000_000));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
