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
        // String.compareTo compares UTF-16 units, which is the order that RFC 8785 §3.2.3 asks for
        for (Map.Entry<String, Json> member : new TreeMap<>(object.members()).entrySet()) {
            out.append(before);
            appendText(member.getKey(), out);
            out.append(':');
            append(member.getValue(), out);
            before = ',';
        }
        out.append(before == '{' ? "{}" : "}");
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
        for (int i = 0; i < text.length(); i++) {
            appendCharacter(text.charAt(i), out);
        }
        out.append('"');
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
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(c)) {
                return true;
            }
        }
        return false;
    }
}
