package wickbench.reading;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.api.words.Coded;

/** The parts of which the JSON forms are made: times, durations, quantities, codes. */
final class Parts {
    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final Pattern UTC_FORM = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}Z");
    private static final BigDecimal LONGEST_SECONDS = BigDecimal.valueOf(31_536_000);
    private static final int MILLI_DIGITS = 3;
    private static final int NANOS_OF_MILLI = 1_000_000;
    private static final String UNITS =
            Arrays.stream(Unit.values()).map(Unit::symbol).collect(Collectors.joining(", "));

    private Parts() {}

    static Json json(Instant instant) {
        return new Json.Text(UTC.format(instant));
    }

    static Json json(Duration span) {
        return new Json.Num(Spans.inSeconds(span));
    }

    static Json json(BigDecimal value) {
        return new Json.Num(value);
    }

    static Json json(Coded choice) {
        return new Json.Text(choice.code());
    }

    static Json.Obj json(Quantity quantity) {
        return Json.object()
                .with("value", quantity.value())
                .with("unit", quantity.unit().symbol());
    }

    /** Keeps a text only if it says something, since a blank one is refused when read. */
    static Optional<String> spoken(String text) {
        return Optional.of(text).filter(some -> !some.isBlank());
    }

    static Optional<Instant> instant(Fields fields, String name) {
        return fields.optional(name, text -> {
            try {
                return Optional.of(text)
                        .filter(UTC_FORM.asMatchPredicate())
                        .map(Parts::instant)
                        .orElseThrow(() -> noTime(text));
            } catch (DateTimeException e) {
                throw noTime(text);
            }
        });
    }

    /** Reads a text of the one form by its places: every strip holds several, and a general parser is slow. */
    private static Instant instant(String text) {
        int hour = digits(text, 11, 13);
        int second = digits(text, 17, 19);
        // the end of a day and a leap second are read by the general one
        return hour == 24 || second == 60
                ? Instant.parse(text)
                : LocalDate.of(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10))
                        .atTime(hour, digits(text, 14, 16), second, digits(text, 20, 23) * NANOS_OF_MILLI)
                        .toInstant(ZoneOffset.UTC);
    }

    private static int digits(String text, int from, int to) {
        return Integer.parseInt(text, from, to, 10);
    }

    private static IllegalArgumentException noTime(String text) {
        return new IllegalArgumentException(
                "expected a UTC time such as 2026-03-01T08:00:00.000Z, found '" + text + "'");
    }

    static Optional<BigDecimal> decimal(Fields fields, String name) {
        return fields.optionalDecimal(name).map(Decimals::plain);
    }

    /** Takes a duration in seconds of at most three decimals. */
    static Optional<Duration> seconds(Fields fields, String name) {
        Optional<BigDecimal> value = decimal(fields, name);
        if (value.filter(
                        some -> some.signum() < 0 || some.compareTo(LONGEST_SECONDS) > 0 || some.scale() > MILLI_DIGITS)
                .isPresent()) {
            fields.complain(
                    name,
                    "expected 0 to 31536000 seconds with at most three decimals, found "
                            + Decimals.text(value.orElseThrow()));
            return Optional.empty();
        }
        return value.map(
                some -> Duration.ofMillis(some.movePointRight(MILLI_DIGITS).longValueExact()));
    }

    static <E extends Enum<E> & Coded> Optional<E> code(Fields fields, String name, Class<E> type) {
        return fields.optional(name, text -> Coded.of(type, text));
    }

    static <E extends Enum<E> & Coded> Optional<E> needCode(Fields fields, String name, Class<E> type) {
        Optional<E> value = code(fields, name, type);
        // the codes are listed only for a complaint
        return fields.has(name) ? value : need(fields, name, "one of " + codes(type), value);
    }

    private static <E extends Enum<E> & Coded> String codes(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", "));
    }

    static <T> Optional<T> needParsed(Fields fields, String name, String expected, Function<String, T> parse) {
        return need(fields, name, expected, fields.optional(name, parse));
    }

    static Optional<Unit> needUnit(Fields fields, String name) {
        return needParsed(fields, name, "a unit (" + UNITS + ")", Unit::ofSymbol);
    }

    static Optional<BigDecimal> needDecimal(Fields fields, String name) {
        return need(fields, name, "a number", decimal(fields, name));
    }

    /** Takes a whole number from 1 on that fits an int; 1 stands in for a wrong one. */
    static int count(Fields fields, String name) {
        Optional<BigDecimal> value = need(fields, name, "a whole number from 1 on", decimal(fields, name));
        Optional<Integer> count = value.filter(Parts::counts).map(BigDecimal::intValueExact);
        if (count.isEmpty()) {
            value.ifPresent(
                    some -> fields.complain(name, "expected a whole number from 1 on, found " + Decimals.text(some)));
        }
        return count.orElse(1);
    }

    private static boolean counts(BigDecimal value) {
        return value.scale() == 0 && value.signum() > 0 && value.compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) <= 0;
    }

    static Optional<Quantity> quantity(Fields fields) {
        Optional<BigDecimal> value = needDecimal(fields, "value");
        Optional<Unit> unit = needUnit(fields, "unit");
        return value.flatMap(number -> unit.map(of -> new Quantity(number, of)));
    }

    /** Complains that a member is missing, unless something else was wrong with it. */
    static <T> Optional<T> need(Fields fields, String name, String expected, Optional<T> value) {
        if (!fields.has(name)) {
            fields.complain(name, "is missing; expected " + expected);
        }
        return value;
    }

    /** Complains when a list is left out where even an empty one must stand. */
    static void needList(Fields fields, String name) {
        need(fields, name, "a list", Optional.empty());
    }

    /** Builds a value of the parts read so far, if nothing was wrong with them. */
    static <T> Optional<T> build(Fields fields, Supplier<T> build) {
        return fields.clean() ? Optional.of(build.get()) : Optional.empty();
    }
}
