package wickbench.api.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A choice from a closed list that files and entries name by a code, such as {@code food-solid}. */
public interface Coded {

    /** Returns the enum constant's name; implemented by the enum itself. */
    String name();

    /** Returns the code: the name in lower case with hyphens. */
    default String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Returns the choice with the given code.
     *
     * @throws IllegalArgumentException when there is none, naming the codes that exist
     */
    static <E extends Enum<E> & Coded> E of(Class<E> type, String code) {
        E[] choices = type.getEnumConstants();
        for (E choice : choices) {
            // nearly every code spells its constant's name, so that no other code need be made
            if (spells(code, choice.name()) && choice.code().equals(code)) {
                return choice;
            }
        }
        return Arrays.stream(choices)
                .filter(choice -> choice.code().equals(code))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("expected one of " + codes(type) + ", found '" + code + "'"));
    }

    /** Tells whether a code is a constant's name in lower case with hyphens. */
    private static boolean spells(String code, String name) {
        if (code.length() != name.length()) {
            return false;
        }
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            if ((c == '-' ? '_' : Character.toUpperCase(c)) != name.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static <E extends Enum<E> & Coded> String codes(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Coded::code).collect(Collectors.joining(", "));
    }
}
