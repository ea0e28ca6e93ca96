package wickbench.api.json;

import java.util.Map;
import java.util.TreeMap;

/** Writes the canonical form of RFC 8785: no white space, names in order of UTF-16 units, ECMAScript numbers. */
final class CanonicalWriter {
    private static final String HEX = "0123456789abcdef";

    private CanonicalWriter() {}

    static String write(Json value) {
        StringBuilder out = new StringBuilder();
        append(value, out);
        return out.toString();
    }

    private static void append(Json value, StringBuilder out) {
        if (value instanceof Json.Obj object) {
            appendObject(object, out);
        } else if (value instanceof Json.Arr array) {
            appendArray(array, out);
        } else if (value instanceof Json.Text text) {
            appendText(text.value(), out);
        } else if (value instanceof Json.Num number) {
            out.append(EcmaNumber.text(number.value()));
        } else if (value instanceof Json.Bool bool) {
            out.append(bool.value());
        } else {
            out.append("null");
        }
    }

    private static void appendObject(Json.Obj object, StringBuilder out) {
        char before = '{';
        Map<String, Json> members = object.members();
        Map<String, Json> sorted = isSorted(members) ? members : new TreeMap<>(members);
        for (Map.Entry<String, Json> member : sorted.entrySet()) {
            out.append(before);
            appendText(member.getKey(), out);
            out.append(':');
            append(member.getValue(), out);
            before = ',';
        }
        out.append(before == '{' ? "{}" : "}");
    }

    /** Tells whether names stand in order, as those do that were read from the canonical form. */
    private static boolean isSorted(Map<String, Json> members) {
        String before = "";
        for (String name : members.keySet()) {
            // String.compareTo compares UTF-16 units, which is the order that RFC 8785 §3.2.3 asks for
            if (name.compareTo(before) < 0) {
                return false;
            }
            before = name;
        }
        return true;
    }

    private static void appendArray(Json.Arr array, StringBuilder out) {
        char before = '[';
        for (Json item : array.items()) {
            out.append(before);
            append(item, out);
            before = ',';
        }
        out.append(before == '[' ? "[]" : "]");
    }

    private static void appendText(String text, StringBuilder out) {
        out.append('"');
        if (isPlain(text)) {
            out.append(text);
        } else {
            for (int i = 0; i < text.length(); i++) {
                appendCharacter(text.charAt(i), out);
            }
        }
        out.append('"');
    }

    /** Tells whether a text stands as it is, as nearly every one does: then it is copied at once. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 0x20 || c == '"' || c == '\\') {
                return false;
            }
        }
        return true;
    }

    private static void appendCharacter(char c, StringBuilder out) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\t' -> out.append("\\t");
            case '\n' -> out.append("\\n");
            case '\f' -> out.append("\\f");
            case '\r' -> out.append("\\r");
            default -> {
                if (c < 0x20) {
                    out.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
                } else {
                    out.append(c);
                }
            }
        }
    }

    static boolean hasLoneSurrogate(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE) {
                continue;
            }
            boolean pair = Character.isHighSurrogate(c)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (!pair) {
                return true;
            }
            i++;
        }
        return false;
    }
}
