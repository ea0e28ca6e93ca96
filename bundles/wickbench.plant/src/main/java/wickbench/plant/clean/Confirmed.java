package wickbench.plant.clean;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * Quality stands behind a series that passed; the body of {@code validation.confirmed}.
 *
 * @param until the last local day on which the clean counts as shown to work
 */
public record Confirmed(String clean, LocalDate until, String reason) {
    public static final String KIND = "validation.confirmed";

    public Json.Obj body() {
        return Json.object()
                .with("clean", clean)
                .with("until", until.toString())
                .with("reason", reason);
    }

    /** Reads a body. */
    public static Checked<Confirmed> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String clean = fields.text("clean");
        Optional<LocalDate> until = taking.needed("until", Confirmed::day);
        String reason = fields.text("reason");
        return fields.finish(() -> new Confirmed(clean, until.orElseThrow(), reason));
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("expected a day such as 2026-03-01, found '" + text + "'");
        }
    }
}
