package wickbench.api.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/**
 * The words of one bundle, in the language of the program.
 *
 * <p>They stand in {@code OSGI-INF/l10n/NAME.properties} of the bundle, other languages in fragments beside it. A pattern
 * follows {@link MessageFormat}, so an apostrophe is written twice. Values are put in as text: the caller formats numbers,
 * see {@link Decimals}.
 */
public final class Words {
    /** What a language lacks is taken from the file without a language, never from that of the machine. */
    private static final ResourceBundle.Control ASKED_ONLY =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Class<?> owner;
    private final String name;

    private Words(Class<?> owner, String name) {
        this.owner = owner;
        this.name = name;
    }

    /**
     * Returns the words of the bundle that holds {@code owner}.
     *
     * <p>They may be kept: the language is looked up for each word, so it does not matter whether it was decided before.
     *
     * @param owner any class of that bundle
     * @param name the message file's name without ending
     */
    public static Words of(Class<?> owner, String name) {
        return new Words(owner, name);
    }

    /**
     * Returns the words for {@code key} with the values put in.
     *
     * @throws java.util.MissingResourceException when there are none, which is a broken build
     */
    public String get(String key, Object... values) {
        return in(Locale.getDefault(), key, values);
    }

    /** Returns the words for {@code key} in a language that need not be the program's. */
    String in(Locale language, String key, Object... values) {
        Object[] texts = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            texts[i] = Objects.toString(values[i]);
        }
        return new MessageFormat(file(language).getString(key), Locale.ROOT).format(texts);
    }

    public boolean has(String key) {
        return file().containsKey(key);
    }

    /** Returns the whole file in the language of the program, for a library that takes its words from one. */
    public ResourceBundle file() {
        return file(Locale.getDefault());
    }

    private ResourceBundle file(Locale language) {
        return ResourceBundle.getBundle("OSGI-INF.l10n." + name, language, owner.getClassLoader(), ASKED_ONLY);
    }
}
