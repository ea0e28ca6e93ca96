package wickbench.training.book;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.training.Terms;

/** Bodies about competence as steps, and what they have in common. */
public final class Bodies {
    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    private Bodies() {}

    /** Returns a time as entries write it. */
    public static String time(Instant at) {
        return MILLIS.format(at);
    }

    static Json.Obj terms(Terms terms, Instant at) {
        return Json.object()
                .with("at", time(at))
                .with("months", terms.months())
                .with("untested_weeks", terms.untestedWeeks())
                .with("remind_days", terms.remindDays());
    }

    static Terms terms(Fields fields) {
        return new Terms(
                (int) fields.whole("months"), (int) fields.whole("untested_weeks"), (int) fields.whole("remind_days"));
    }

    /** Returns what an entry moves; empty when it moves nobody. */
    static Optional<Step> step(Told told) {
        Fields fields = told.fields();
        return switch (told.kind()) {
            case Kinds.TERMS -> Optional.of(new Step.Termed(told.at(), terms(fields)));
            case Kinds.AUTHORISED, Kinds.RESTORED ->
                Optional.of(new Step.Authorised(
                        told.at(),
                        told.id(),
                        date(fields.text("until")),
                        fields.optionalWhole("version").map(Long::intValue),
                        fields.text("reason"),
                        told.is(Kinds.RESTORED),
                        ids(fields.texts("suspensions"))));
            case Kinds.SUSPENDED ->
                Optional.of(new Step.Suspended(told.at(), told.id(), fields.text("reason"), !fields.has("method")));
            case Kinds.ACKNOWLEDGED ->
                Optional.of(new Step.Acknowledged(told.at(), told.id(), (int) fields.whole("version")));
            default -> Optional.empty();
        };
    }

    static Set<UUID> ids(List<String> texts) {
        Set<UUID> ids = new HashSet<>();
        texts.forEach(text -> ids.add(UUID.fromString(text)));
        return ids;
    }

    /** Reads a day; an {@link IllegalArgumentException} tells what was expected. */
    public static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("expected a date such as 2026-03-31, found '" + text + "'", e);
        }
    }
}
