package wickbench.plant.face;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.method.MethodId;
import wickbench.api.words.Coded;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Form;
import wickbench.plant.site.Sampling;
import wickbench.plant.terms.PlantWords;

/** What was typed, as what it means. */
final class Typed {
    private static final int DATE = "2026-03-01".length();
    private static final int MOST = 3;

    private Typed() {}

    static <T> T of(String field, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(field, String.valueOf(e.getMessage())));
        }
    }

    static <E extends Enum<E> & Coded> E choice(String field, String text, Class<E> type) {
        return of(field, text, code -> Coded.of(type, code));
    }

    static List<String> allergens(String field, List<String> typed) {
        return typed.stream().map(code -> of(field, code, Allergens::known)).toList();
    }

    static List<UUID> ids(String field, List<String> typed) {
        return typed.stream().map(id -> of(field, id, UUID::fromString)).toList();
    }

    /** Reads {@code PLACE=METHOD}. */
    static Sampling sampling(String field, String text) {
        int sign = text.lastIndexOf('=');
        if (sign < 1) {
            throw wrong(field, "order.pair", text);
        }
        return new Sampling(
                text.substring(0, sign).strip(),
                of(field, text.substring(sign + 1).strip(), MethodId::new));
    }

    /** Reads {@code ALLERGEN}, {@code ALLERGEN:FORM} or {@code ALLERGEN:FORM:PART}; without a form it is a powder. */
    static Contained contained(String text) {
        String[] parts = text.split(":", MOST);
        Form form = parts.length > 1 ? choice("--holds", parts[1], Form.class) : Form.POWDER;
        return new Contained(
                of("--holds", parts[0], Allergens::known),
                form,
                parts.length == MOST ? Optional.of(parts[2].strip()).filter(part -> !part.isEmpty()) : Optional.empty(),
                Optional.empty());
    }

    static LocalDate day(String field, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw wrong(field, "time.expected", text);
        }
    }

    /** Reads a time; without offset by the site's clocks, where the hour that a night has twice must name its offset. */
    static Instant time(String field, String text, ZoneId zone) {
        return time(field, text, zone, LocalTime.MIN);
    }

    /** Reads a time, or the end of a day. */
    static Instant upTo(String field, String text, ZoneId zone) {
        return time(field, text, zone, LocalTime.MAX);
    }

    private static Instant time(String field, String text, ZoneId zone, LocalTime ofDay) {
        String iso = text.strip().replace(' ', 'T');
        try {
            return OffsetDateTime.parse(iso).toInstant();
        } catch (DateTimeException e) {
            return local(field, iso, zone, ofDay);
        }
    }

    private static Instant local(String field, String iso, ZoneId zone, LocalTime ofDay) {
        try {
            LocalDateTime local = iso.length() == DATE ? LocalDate.parse(iso).atTime(ofDay) : LocalDateTime.parse(iso);
            if (zone.getRules().getValidOffsets(local).size() != 1) {
                throw wrong(field, "time.twice", iso, zone);
            }
            return local.atZone(zone).toInstant();
        } catch (DateTimeException e) {
            throw wrong(field, "time.expected", iso);
        }
    }

    static BadInput wrong(String field, String code, Object... facts) {
        return new BadInput(Complaint.of(field, PlantWords.get(code, facts)));
    }
}
