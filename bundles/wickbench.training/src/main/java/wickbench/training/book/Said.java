package wickbench.training.book;

import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;

/** Why something that was said is not taken. */
public final class Said {
    private Said() {}

    public static BadInput wrong(String field, String code, Object... values) {
        return new BadInput(Complaint.of(field, TrainingWords.get(code, values)));
    }

    public static Refusal refused(String code, Object... values) {
        return new Refusal(code, TrainingWords.get(code, values));
    }

    /** Returns a reason that says something. */
    public static String reason(String text) {
        if (text.isBlank()) {
            throw wrong("reason", "reason.blank");
        }
        return text.strip();
    }
}
