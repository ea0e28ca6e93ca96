package wickbench.report.pdf;

import java.awt.Color;
import wickbench.report.text.Typeface;

/**
 * How words look on paper.
 *
 * @param size in points
 */
record Style(Typeface typeface, double size, Color color) {
    static final Color INK = new Color(0x1B2530);
    static final Color QUIET = new Color(0x4E5C6A);
    static final Color EDGE = new Color(0xB4BEC8);
    static final Color WASH = new Color(0xF0F3F6);

    static final Style TITLE = new Style(Typeface.BOLD, 15, INK);
    static final Style HEADING = new Style(Typeface.BOLD, 10.5, INK);
    static final Style BODY = new Style(Typeface.PLAIN, 8.5, INK);
    static final Style STRONG = new Style(Typeface.BOLD, 8.5, INK);
    static final Style NAME = new Style(Typeface.PLAIN, 8.5, QUIET);
    static final Style CELL = new Style(Typeface.PLAIN, 7.5, INK);
    static final Style HEAD = new Style(Typeface.BOLD, 7.5, INK);
    static final Style SMALL = new Style(Typeface.PLAIN, 6.8, QUIET);
    static final Style FIXED = new Style(Typeface.FIXED, 6.8, INK);

    /** Returns the distance from one line to the next. */
    double leading() {
        return size * 1.38;
    }

    /** Returns how far below a line's upper edge its words stand. */
    double baseline() {
        return size * 1.05;
    }

    Style in(Color other) {
        return new Style(typeface, size, other);
    }
}
