package wickbench.stock.gs1;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import wickbench.api.words.Coded;

/** The application identifiers that mean something in a stock room (General Specifications §3). */
public enum Identifier implements Coded {
    GTIN("01", Form.FIXED, "\\d{14}"),
    LOT("10", Form.VARIABLE, "X{1,20}"),
    PRODUCED("11", Form.FIXED, "\\d{6}"),
    BEST_BEFORE("15", Form.FIXED, "\\d{6}"),
    EXPIRY("17", Form.FIXED, "\\d{6}"),
    SERIAL("21", Form.VARIABLE, "X{1,20}"),
    VARIABLE_COUNT("30", Form.VARIABLE, "\\d{1,8}"),
    COUNT("37", Form.VARIABLE, "\\d{1,8}");

    /** The 82 characters that an element may hold (General Specifications §7.11, ISO/IEC 646). */
    static final String CHARACTERS = "[!\"%-?A-Z_a-z]";

    private enum Form {
        FIXED,
        VARIABLE
    }

    private final String digits;
    private final Form form;
    private final Pattern value;

    Identifier(String digits, Form form, String value) {
        this.digits = digits;
        this.form = form;
        this.value = Pattern.compile(value.replace("X", CHARACTERS));
    }

    /** Returns the two digits that stand before the value. */
    public String digits() {
        return digits;
    }

    /** Tells whether its value ends with a separator, unless it is the last. */
    boolean variable() {
        return form == Form.VARIABLE;
    }

    /** Tells whether its value is a date. */
    public boolean dated() {
        return this == PRODUCED || this == BEST_BEFORE || this == EXPIRY;
    }

    /** Returns how long a fixed value is. */
    int length() {
        return this == GTIN ? 14 : 6;
    }

    boolean allows(String text) {
        return value.matcher(text).matches();
    }

    static Optional<Identifier> at(String text, int from) {
        return Arrays.stream(values())
                .filter(each -> text.startsWith(each.digits, from))
                .findFirst();
    }
}
