package wickbench.training.face;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.training.book.Bodies;
import wickbench.training.book.TrainingWords;

/** What was typed, as what it means. */
final class Typed {
    private Typed() {}

    static <T> T of(String field, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(field, String.valueOf(e.getMessage())));
        }
    }

    static PersonId person(String field, String text) {
        return of(field, text, PersonId::new);
    }

    static List<PersonId> people(String field, String text) {
        return text == null
                ? List.of()
                : Arrays.stream(text.split(","))
                        .map(String::strip)
                        .map(each -> person(field, each))
                        .toList();
    }

    static MethodId method(String text) {
        return of("--method", text, MethodId::new);
    }

    static LocalDate date(String field, String text) {
        return of(field, text, Bodies::date);
    }

    /** Reads a time; without offset by the site's clocks, where the hour that a night has twice must name its offset. */
    static Instant time(String field, String text, ZoneId zone) {
        return of(field, text, typed -> instant(typed, zone));
    }

    /** Reads a time; an {@link IllegalArgumentException} tells what was expected. */
    static Instant instant(String text, ZoneId zone) {
        String iso = text.strip().replace(' ', 'T');
        try {
            return OffsetDateTime.parse(iso).toInstant();
        } catch (DateTimeException e) {
            return local(iso, zone);
        }
    }

    private static Instant local(String iso, ZoneId zone) {
        try {
            LocalDateTime local = iso.length() == "2026-03-01".length()
                    ? LocalDate.parse(iso).atStartOfDay()
                    : LocalDateTime.parse(iso);
            if (zone.getRules().getValidOffsets(local).size() != 1) {
                throw new IllegalArgumentException(TrainingWords.get("time.twice", iso, zone));
            }
            return local.atZone(zone).toInstant();
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(TrainingWords.get("time.expected", iso), e);
        }
    }
}
