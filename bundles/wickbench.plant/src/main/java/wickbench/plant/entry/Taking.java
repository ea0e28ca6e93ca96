package wickbench.plant.entry;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.authority.Signature;
import wickbench.api.json.Fields;
import wickbench.api.words.Coded;

/** Takes members of a body, each with one line for what is wrong with it. */
public final class Taking {
    private final Fields fields;

    private Taking(Fields fields) {
        this.fields = fields;
    }

    /** Takes of a whole body, which may be signed. */
    public static Taking body(Fields fields) {
        fields.has(Signature.MEMBER);
        return new Taking(fields);
    }

    /** Takes of an object within one. */
    public static Taking part(Fields fields) {
        return new Taking(fields);
    }

    public Fields fields() {
        return fields;
    }

    /** Takes what must be there; empty only after a complaint. */
    public <T> Optional<T> needed(String name, Function<String, T> parse) {
        if (!fields.has(name)) {
            fields.complain(name, "is missing; expected a text");
        }
        return fields.optional(name, parse);
    }

    public <E extends Enum<E> & Coded> Optional<E> choice(String name, Class<E> type) {
        return needed(name, code -> Coded.of(type, code));
    }

    public Optional<Instant> instant(String name) {
        if (!fields.has(name)) {
            fields.complain(name, "is missing; expected a UTC time");
        }
        return fields.optionalInstant(name);
    }

    /** Takes a whole number within a range, or what stands in for it where it is not said. */
    public int whole(String name, int least, int most, Optional<Integer> standIn) {
        if (!fields.has(name) && standIn.isPresent()) {
            return standIn.get();
        }
        long value = fields.whole(name);
        if (value < least || value > most) {
            fields.complain(name, "expected a whole number from " + least + " to " + most + ", found " + value);
            return least;
        }
        return (int) value;
    }

    /** Takes a number within a range, both ends included; empty where it is not said. */
    public Optional<BigDecimal> between(String name, String least, String most) {
        return fields.optionalDecimal(name)
                .filter(value -> within(name, value, new BigDecimal(least), new BigDecimal(most)));
    }

    private boolean within(String name, BigDecimal value, BigDecimal least, BigDecimal most) {
        boolean inside = value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
        if (!inside) {
            fields.complain(
                    name,
                    "expected a number from " + least.toPlainString() + " to " + most.toPlainString() + ", found "
                            + value.toPlainString());
        }
        return inside;
    }

    /** Takes texts, each once. */
    public Set<String> names(String name) {
        Set<String> names = new LinkedHashSet<>();
        for (String text : fields.texts(name)) {
            if (text.isBlank() || !names.add(text)) {
                fields.complain(name, "expected each name once and none blank, found '" + text + "'");
            }
        }
        return names;
    }

    public <T> List<T> values(String name, Function<String, T> parse) {
        List<T> values = new ArrayList<>();
        for (String text : names(name)) {
            try {
                values.add(parse.apply(text));
            } catch (IllegalArgumentException e) {
                fields.complain(name, String.valueOf(e.getMessage()));
            }
        }
        return values;
    }

    public List<UUID> ids(String name) {
        return values(name, UUID::fromString);
    }
}
