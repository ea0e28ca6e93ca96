package wickbench.plant.book;

import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.plant.terms.PlantWords;

/** Why something that was said is not taken. */
final class Said {
    private Said() {}

    static BadInput wrong(String field, String code, Object... values) {
        return new BadInput(Complaint.of(field, PlantWords.get(code, values)));
    }

    static Refusal refused(String code, Object... values) {
        return new Refusal("plant." + code, PlantWords.get(code, values));
    }

    /** Returns a reason that says something. */
    static String reason(String text) {
        if (text.isBlank()) {
            throw wrong("--reason", "reason.blank");
        }
        return text.strip();
    }
}
