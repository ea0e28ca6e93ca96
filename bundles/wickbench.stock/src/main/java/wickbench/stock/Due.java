package wickbench.stock;

import java.time.LocalDate;
import wickbench.api.words.Coded;

/**
 * Something that somebody must see to.
 *
 * @param day by when; of what is overdue, since when
 * @param subject a lot, a kit, a fridge or a device
 * @param fact in numbers: days, strips or boxes
 */
public record Due(What what, LocalDate day, String subject, String about, long fact) {

    /** What is due; the more urgent first. */
    public enum What implements Coded {
        /** A fridge was outside its range at its last reading. */
        OUTSIDE,
        DECIDE,
        SETTLE,
        EXPIRED,
        COUNT,
        CHECK,
        CALIBRATE,
        ORDER,
        INSERT,
        EXPIRES,
        LOGGER
    }
}
