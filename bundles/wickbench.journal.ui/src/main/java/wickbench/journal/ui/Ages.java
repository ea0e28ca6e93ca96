package wickbench.journal.ui;

import java.time.Duration;

/** How long ago, in words. */
final class Ages {
    private Ages() {}

    static String text(Duration age) {
        if (age.toDays() > 1) {
            return JournalUiWords.get("age.days", age.toDays());
        }
        if (age.toDays() == 1) {
            return JournalUiWords.get("age.day");
        }
        return age.toHours() > 0 ? JournalUiWords.get("age.hours", age.toHours()) : JournalUiWords.get("age.now");
    }
}
