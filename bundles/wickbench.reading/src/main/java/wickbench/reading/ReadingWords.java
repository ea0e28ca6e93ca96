package wickbench.reading;

import java.util.Locale;
import wickbench.api.words.Coded;
import wickbench.api.words.Words;

/** The words for the codes of methods and readings, in the user's language. */
public final class ReadingWords {
    private ReadingWords() {}

    /**
     * Returns the words for an outcome, a severity, something owed, a line, what was seen of it, a route, a format, a reason, a
     * visual check, a control, a basis, or where a limit holds.
     *
     * @throws java.util.MissingResourceException for a choice of another kind
     */
    public static String text(Coded choice) {
        String kind = choice.getClass().getSimpleName().replaceAll("(?<=.)([A-Z])", "-$1");
        return words().get(kind.toLowerCase(Locale.ROOT) + "." + choice.code());
    }

    /** Returns why a result is in doubt; a cause that this bundle does not know gets a general word with its code. */
    public static String doubt(String cause) {
        String key = "doubt." + cause;
        return words().get(words().has(key) ? key : "doubt.other", cause);
    }

    /** Looked up anew each time, because the user may change the language. */
    static Words words() {
        return Words.of(ReadingWords.class, "reading");
    }
}
