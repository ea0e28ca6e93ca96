package wickbench.api.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** A JSON value (RFC 8259, restricted to I-JSON, RFC 7493). */
public sealed interface Json {

    /** An object; its members keep the order they were given in. */
    record Obj(Map<String, Json> members) implements Json {
        public Obj {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
            members.forEach((name, value) -> {
                requireWhole(name);
                Objects.requireNonNull(value, name);
            });
        }

        public Optional<Json> get(String name) {
            return Optional.ofNullable(members.get(name));
        }

        /** Returns this object with one member more, or one replaced. */
        public Obj with(String name, Json value) {
            Map<String, Json> more = new LinkedHashMap<>(members);
            more.put(name, value);
            return new Obj(more);
        }

        public Obj with(String name, String value) {
            return with(name, new Text(value));
        }

        public Obj with(String name, long value) {
            return with(name, new Num(BigDecimal.valueOf(value)));
        }

        public Obj with(String name, BigDecimal value) {
            return with(name, new Num(value));
        }

        public Obj with(String name, boolean value) {
            return with(name, new Bool(value));
        }

        /** Returns this object with the member if there is a value, else without it. */
        public Obj withOptional(String name, Optional<? extends Json> value) {
            return value.isPresent() ? with(name, value.get()) : this;
        }

        /** Returns this object with the text if there is one, else without it. */
        public Obj withText(String name, Optional<String> value) {
            return withOptional(name, value.map(Text::new));
        }
    }

    /** An array. */
    record Arr(List<Json> items) implements Json {
        public Arr {
            items = List.copyOf(items);
        }
    }

    /** A text of whole Unicode characters. */
    record Text(String value) implements Json {
        public Text {
            requireWhole(value);
        }
    }

    /** A decimal of at most {@value #DIGITS} significant digits; trailing zeros carry no meaning. */
    record Num(BigDecimal value) implements Json {
        /** Every double of so few digits gives them back unchanged. */
        public static final int DIGITS = 15;

        private static final int LARGEST_EXPONENT = 300;

        public Num {
            value = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
            if (value.precision() > DIGITS) {
                throw new IllegalArgumentException("more than " + DIGITS + " significant digits: " + value);
            }
            if (Math.abs((long) value.precision() - value.scale() - 1) > LARGEST_EXPONENT) {
                throw new IllegalArgumentException("outside 1e-300 to 1e300: " + value);
            }
        }

        /** Returns {@code value} rounded half up to the digits that JSON keeps. */
        public static BigDecimal rounded(BigDecimal value) {
            return value.round(new MathContext(DIGITS, java.math.RoundingMode.HALF_UP));
        }
    }

    /** True or false. */
    record Bool(boolean value) implements Json {}

    /** Null, which is not the same as absent. */
    enum Null implements Json {
        NULL
    }

    /** Returns an object without members, to be filled by its {@code with} methods. */
    static Obj object() {
        return new Obj(Map.of());
    }

    static Arr array(List<? extends Json> items) {
        return new Arr(List.copyOf(items));
    }

    static Arr texts(List<String> items) {
        return new Arr(items.stream().<Json>map(Text::new).toList());
    }

    /** Returns the canonical form of RFC 8785. */
    default String canonical() {
        return CanonicalWriter.write(this);
    }

    private static void requireWhole(String text) {
        if (CanonicalWriter.hasLoneSurrogate(text)) {
            throw new IllegalArgumentException("half a Unicode character (lone surrogate)");
        }
    }
}
