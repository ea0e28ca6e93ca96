package wickbench.report.text;

import java.util.function.IntPredicate;

/**
 * Makes every character of a text visible, because what cannot be seen can deceive.
 *
 * <p>A character without a glyph, a control, and a mark that changes the direction or joins unseen is written as {@code
 * [U+1F9C0]}. Blanks of other widths stay if the font has them.
 */
public final class Visible {
    private static final String LINE_END = "\u21B5";

    private final IntPredicate drawable;

    /** @param drawable tells whether the font has a glyph for a code point */
    public Visible(IntPredicate drawable) {
        this.drawable = drawable;
    }

    /** Returns the text on one line; a line end in it becomes {@code ↵}. */
    public String line(String text) {
        return lines(text).replace("\n", LINE_END);
    }

    /** Returns the text with its line ends, each as {@code \n}. */
    public String lines(String text) {
        StringBuilder out = new StringBuilder(text.length());
        breaks(text).codePoints().forEach(c -> append(out, c));
        return out.toString();
    }

    /** Returns at most so many characters of a line; a longer one ends in {@code …}. */
    public String atMost(String text, int length) {
        // what lies far beyond need not be looked at
        String near = text.codePointCount(0, text.length()) <= length
                ? text
                : text.substring(0, text.offsetByCodePoints(0, length)) + "…";
        String line = line(near);
        return line.codePointCount(0, line.length()) <= length
                ? line
                : line.substring(0, line.offsetByCodePoints(0, length - 1)) + "…";
    }

    private static String breaks(String text) {
        return text.replace("\r\n", "\n")
                .replace('\r', '\n')
                .replace('\u2028', '\n')
                .replace('\u2029', '\n');
    }

    private void append(StringBuilder out, int c) {
        if (c == '\n') {
            out.append('\n');
        } else if (c == '\t') {
            out.append("    ");
        } else if (seen(c) && drawable.test(c)) {
            out.appendCodePoint(c);
        } else {
            out.append(String.format("[U+%04X]", c));
        }
    }

    private static boolean seen(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.PRIVATE_USE
                && type != Character.UNASSIGNED;
    }
}
