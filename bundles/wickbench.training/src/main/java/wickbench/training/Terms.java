package wickbench.training;

import java.time.LocalDate;

/**
 * How long a competence holds at this site; common practice, no published source.
 *
 * @param months how long an authorisation runs when nothing else is said
 * @param untestedWeeks after how many weeks without a strip of the method it lapses
 * @param remindDays how many days before its end one is reminded
 */
public record Terms(int months, int untestedWeeks, int remindDays) {
    /** What holds until the site says otherwise. */
    public static final Terms USUAL = new Terms(12, 8, 30);

    private static final int MOST = 1000;

    public Terms {
        check("months", months);
        check("weeks", untestedWeeks);
        check("days", remindDays);
    }

    /** Returns the last day of a usual term that begins on a day. */
    public LocalDate lastDay(LocalDate from) {
        return from.plusMonths(months).minusDays(1);
    }

    private static void check(String what, int value) {
        if (value < 1 || value > MOST) {
            throw new IllegalArgumentException("expected 1 to " + MOST + " " + what + ", found " + value);
        }
    }
}
