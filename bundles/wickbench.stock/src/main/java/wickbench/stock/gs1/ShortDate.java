package wickbench.stock.gs1;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;

/**
 * A date of six digits, YYMMDD.
 *
 * <p>The century lies nearest to today (General Specifications §7.12): 51 to 99 years ahead means the century before, 50 to 99
 * behind the one after. Day 00 means the last day of the month.
 */
public final class ShortDate {
    private static final int CENTURY = 100;
    private static final int AHEAD = 51;
    private static final int BEHIND = -50;
    private static final int MONTHS = 12;

    private ShortDate() {}

    /** Returns the full year of two digits. */
    public static int year(int twoDigits, int thisYear) {
        int century = thisYear - thisYear % CENTURY;
        int ahead = twoDigits - thisYear % CENTURY;
        if (ahead >= AHEAD) {
            return century - CENTURY + twoDigits;
        }
        return ahead <= BEHIND ? century + CENTURY + twoDigits : century + twoDigits;
    }

    /** Returns the date; empty when there is none of that month or day. */
    public static Optional<LocalDate> read(String digits, int thisYear) {
        if (!digits.matches("[0-9]{6}")) {
            return Optional.empty();
        }
        int month = Integer.parseInt(digits.substring(2, 4));
        if (month < 1 || month > MONTHS) {
            return Optional.empty();
        }
        YearMonth of = YearMonth.of(year(Integer.parseInt(digits.substring(0, 2)), thisYear), month);
        int day = Integer.parseInt(digits.substring(4));
        if (day == 0) {
            return Optional.of(of.atEndOfMonth());
        }
        return of.isValidDay(day) ? Optional.of(of.atDay(day)) : Optional.empty();
    }
}
