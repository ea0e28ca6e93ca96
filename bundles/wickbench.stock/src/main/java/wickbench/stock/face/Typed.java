package wickbench.stock.face;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.lot.LotId;
import wickbench.stock.Companion;
import wickbench.stock.room.StockWords;

/** What was typed, as what it means. */
final class Typed {
    private Typed() {}

    static LotId lot(String text) {
        return of("LOT", text, LotId::new);
    }

    static UUID result(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw wrong("--result", "trace.id", text);
        }
    }

    static <T> T of(String field, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(field, String.valueOf(e.getMessage())));
        }
    }

    /** Reads a time; without offset by the site's clocks, where the hour that a night has twice must name its offset. */
    static Instant time(String field, String text, ZoneId zone) {
        String iso = text.strip().replace(' ', 'T');
        try {
            return OffsetDateTime.parse(iso).toInstant();
        } catch (DateTimeException e) {
            return local(field, iso, zone);
        }
    }

    private static Instant local(String field, String iso, ZoneId zone) {
        try {
            LocalDateTime local = iso.length() == "2026-03-01".length()
                    ? LocalDate.parse(iso).atStartOfDay()
                    : LocalDateTime.parse(iso);
            if (zone.getRules().getValidOffsets(local).size() != 1) {
                throw wrong(field, "time.twice", iso, zone);
            }
            return local.atZone(zone).toInstant();
        } catch (DateTimeException e) {
            throw wrong(field, "time.expected", iso);
        }
    }

    /** Reads {@code PART=LOT} pairs. */
    static Map<String, LotId> lots(List<String> pairs) {
        Map<String, LotId> lots = new TreeMap<>();
        pairs.forEach(pair -> lots.put(left(pair, "--with"), lot(right(pair, "--with"))));
        return lots;
    }

    /** Reads {@code PART=AMOUNT} pairs. */
    static Map<String, BigDecimal> amounts(List<String> pairs) {
        Map<String, BigDecimal> amounts = new TreeMap<>();
        pairs.forEach(pair -> amounts.put(left(pair, "--part"), of("--part", right(pair, "--part"), BigDecimal::new)));
        return amounts;
    }

    /** Reads {@code PART=LOT} or {@code PART=LOT@EXPIRY}. */
    static Companion companion(String text) {
        String lot = right(text, "--companion");
        int at = lot.lastIndexOf('@');
        Optional<LocalDate> expiry =
                at < 0 ? Optional.empty() : Optional.of(date("--companion", lot.substring(at + 1)));
        return new Companion(left(text, "--companion"), lot(at < 0 ? lot : lot.substring(0, at)), expiry);
    }

    static LocalDate date(String field, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw wrong(field, "date.expected", text);
        }
    }

    private static String left(String pair, String field) {
        return pair.substring(0, sign(pair, field)).strip();
    }

    private static String right(String pair, String field) {
        return pair.substring(sign(pair, field) + 1).strip();
    }

    private static int sign(String pair, String field) {
        int sign = pair.indexOf('=');
        if (sign < 1) {
            throw wrong(field, "pair.expected", pair);
        }
        return sign;
    }

    static BadInput wrong(String field, String code, Object... facts) {
        return new BadInput(Complaint.of(field, StockWords.get(code, facts)));
    }
}
