package wickbench.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wickbench.api.words.Decimals;
import wickbench.api.words.Words;

/**
 * What a rule measured and asked, as people read it.
 *
 * <p>Entries keep it in the same few words for good, whatever language was spoken when they were written. Here those words are said in the
 * language of the program; what is not one of them, such as a code or a name, is said as it is, with the decimal sign of the language.
 */
final class FactWords {
    private static final Words WORDS = Words.of(FactWords.class, "facts");

    /** The facts that hold others, by the key of their words. */
    private static final List<Shape> SHAPES = List.of(
            new Shape("at-least", "at least (.+)"),
            new Shape("at-most", "at most (.+)"),
            new Shape("not-before", "not before (.+)"),
            new Shape("not-stated", "(.+) not stated"),
            new Shape("beyond", "(.+) beyond the count"),
            new Shape("version-read", "version (\\d+) read"),
            new Shape("version-acknowledged", "version (\\d+) acknowledged"),
            new Shape("line-of", "(control|hook|test) (seen|seen-faint|faint|not-seen|damaged|whole)"),
            new Shape("second-reader", "(.+), second reader (.+)"),
            new Shape("due", "(\\S+) due (\\d{4}-\\d\\d-\\d\\d)"),
            new Shape("from-to", "(.*\\d) to (\\d.*)"));

    private static final Pattern DECIMAL = Pattern.compile("(?<![\\w.:-])\\d+\\.\\d+(?![\\w.:-])");

    private FactWords() {}

    private record Shape(String key, Pattern pattern) {
        Shape(String key, String pattern) {
            this(key, Pattern.compile(pattern));
        }
    }

    static String said(String fact) {
        String key = key(fact);
        if (WORDS.has(key)) {
            return WORDS.get(key);
        }
        for (Shape shape : SHAPES) {
            Matcher matcher = shape.pattern().matcher(fact);
            if (matcher.matches()) {
                return WORDS.get(shape.key(), parts(matcher));
            }
        }
        return fact.contains(", ")
                ? Arrays.stream(fact.split(", ")).map(FactWords::said).collect(Collectors.joining(", "))
                : DECIMAL.matcher(fact).replaceAll((MatchResult found) -> Decimals.signed(found.group()));
    }

    private static Object[] parts(Matcher matcher) {
        return IntStream.rangeClosed(1, matcher.groupCount())
                .mapToObj(at -> said(matcher.group(at)))
                .toArray();
    }

    /** Whole facts stand under their own words, with hyphens: {@code fact.not-checked}. */
    private static String key(String fact) {
        return "fact."
                + fact.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
