package wickbench.api.words;

/** How short ids are spelled; a plain loop, for lists and the index read them by the million. */
public final class Spelling {
    private Spelling() {}

    /**
     * Tells whether a text is an id of lower-case letters and digits (ASCII), beginning with one of them.
     *
     * @param longest how many characters it may have
     * @param also characters that may follow the first
     */
    public static boolean isId(String text, int longest, String also) {
        if (text.isEmpty() || text.length() > longest || !isLetterOrDigit(text.charAt(0))) {
            return false;
        }
        for (int i = 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (!isLetterOrDigit(c) && also.indexOf(c) < 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean isLetterOrDigit(char c) {
        return c >= 'a' && c <= 'z' || isDigit(c);
    }

    /** Tells whether a character is one of the ten ASCII digits. */
    public static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
