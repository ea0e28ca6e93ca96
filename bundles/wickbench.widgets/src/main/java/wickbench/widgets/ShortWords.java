package wickbench.widgets;

import org.eclipse.swt.graphics.GC;

/** Words shortened to the room there is: they end behind a whole word where that leaves little unused, with three dots. */
public final class ShortWords {
    private static final String MORE = "\u2026";
    private static final double MOST = 0.65;

    private ShortWords() {}

    /**
     * Returns as much as there is room for: whole words if these fill most of it, else also the beginning of the next one.
     *
     * @param gc with the font in which they are painted
     * @param room in pixels
     */
    public static String fitting(GC gc, String text, int room) {
        if (width(gc, text) <= room || text.length() < 2) {
            return text;
        }
        int low = 1;
        int high = text.length() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (width(gc, cut(text, middle)) <= room) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        int space = text.lastIndexOf(' ', low);
        String whole = space > 0 ? cut(text, space) : "";
        return width(gc, whole) >= MOST * room ? whole : cut(text, low);
    }

    /** Behind a whole word the dots stand apart from it. */
    private static String cut(String text, int length) {
        String words = text.substring(0, length).stripTrailing();
        return words + (text.charAt(words.length()) == ' ' ? " " : "") + MORE;
    }

    private static int width(GC gc, String text) {
        return gc.textExtent(text).x;
    }
}
