package wickbench.widgets;

import org.eclipse.swt.graphics.GC;

/** Words shortened to the room there is: they end behind a whole word, with three dots. */
public final class ShortWords {
    private static final String MORE = "\u2026";

    private ShortWords() {}

    /**
     * Returns as many whole words as there is room for; of a word that is too long alone, its beginning.
     *
     * @param gc with the font in which they are painted
     * @param room in pixels
     */
    public static String fitting(GC gc, String text, int room) {
        String words = text;
        String shown = text;
        while (gc.textExtent(shown).x > room && words.length() > 1) {
            int end = words.stripTrailing().lastIndexOf(' ');
            words = end > 0 ? words.substring(0, end) : words.substring(0, words.length() - 1);
            shown = words.stripTrailing() + (end > 0 ? " " : "") + MORE;
        }
        return shown;
    }
}
