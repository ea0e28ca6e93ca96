package wickbench.api.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A language in which the words of this program are installed.
 *
 * <p>English always is. Another one is when the fragment of this bundle is, which names it in its own words.
 *
 * @param code of two or three letters, as in {@code es}
 */
public record Language(String code) {
    public static final Language ENGLISH = new Language(Locale.ENGLISH.getLanguage());

    private static final Words WORDS = Words.of(Language.class, "language");

    /** Returns the language of this code, empty when it is not installed. */
    public static Optional<Language> find(String code) {
        return Optional.of(new Language(code)).filter(Language::isInstalled);
    }

    /** Returns the languages that are installed, English first. */
    public static List<Language> installed() {
        return Stream.concat(
                        Stream.of(ENGLISH),
                        Stream.of(Locale.getISOLanguages())
                                .map(Language::new)
                                .filter(each -> !each.equals(ENGLISH))
                                .filter(Language::isInstalled))
                .toList();
    }

    /** Returns what it is called in the language of the program, whether it is installed or not. */
    public static String named(String code) {
        return Locale.forLanguageTag(code).getDisplayLanguage();
    }

    /** Returns what those who speak it call it. */
    public String ownName() {
        return say("name");
    }

    /** Tells in this language that it is that of the program from its next start on. */
    public String fromNextStart() {
        return say("next-start");
    }

    /** Returns the locale that goes with it: that of the machine where this speaks the language, with its decimal sign. */
    public Locale locale(Locale machine) {
        return machine.getLanguage().equals(code) ? machine : Locale.forLanguageTag(code);
    }

    private String say(String key) {
        return WORDS.in(Locale.forLanguageTag(code), key);
    }

    private boolean isInstalled() {
        return equals(ENGLISH)
                || code.matches("[a-z]{2,3}")
                        && Language.class.getResource("/OSGI-INF/l10n/language_" + code + ".properties") != null;
    }
}
