package wickbench.demo;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import wickbench.api.lot.LotId;

/** Which lot of a kit is in use on a day: one after the other, each named by its first day. */
record Lots(LocalDate first) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuMMdd", Locale.ROOT);
    private static final int DAYS_A_WEEK = 7;

    LotId inUse(Plant.Kit kit, LocalDate day) {
        long lasts = (long) kit.lotWeeks() * DAYS_A_WEEK;
        long past = ChronoUnit.DAYS.between(first, day) / lasts;
        return new LotId(kit.lots() + "-" + DAY.format(first.plusDays(past * lasts)));
    }
}
