package wickbench.report.sheet;

import java.util.regex.Pattern;

/**
 * Text as it may stand in a cell of an Office Open XML sheet.
 *
 * <p>A character that XML cannot hold is written {@code _x0007_}, and a text that looks like that gets {@code _x005F_} before
 * it (ECMA-376 part 1, 22.4.2.4 bstr).
 */
final class XlsxText {
    /** What a cell can hold (ECMA-376 gives none; this is what spreadsheets take). */
    static final int LONGEST = 32_767;

    private static final Pattern LOOKS_ESCAPED = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private XlsxText() {}

    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        LOOKS_ESCAPED
                .matcher(Tables.whole(cut(text)))
                .replaceAll("_x005F_")
                .codePoints()
                .forEach(c -> append(out, c));
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        if (legal(c)) {
            out.appendCodePoint(c);
        } else {
            out.append(String.format("_x%04X_", c));
        }
    }

    /** A carriage return is legal, but every XML reader turns it into a line feed. */
    private static boolean legal(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c != 0xFFFE && c != 0xFFFF;
    }

    private static String cut(String text) {
        String mark = "… [" + text.length() + "]";
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - mark.length()) + mark;
    }
}
