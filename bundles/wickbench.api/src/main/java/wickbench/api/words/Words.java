package wickbench.api.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/**
 * The words of one bundle, in the language of the user.
 *
 * <p>They stand in {@code OSGI-INF/l10n/NAME.properties} of the bundle, other languages in fragments beside it. A pattern
 * follows {@link MessageFormat}, so an apostrophe is written twice. Values are put in as text: the caller formats numbers.
 */
public final class Words {
    private final ResourceBundle bundle;

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /**
     * Returns the words of the bundle that holds {@code owner}.
     *
     * @param owner any class of that bundle
     * @param name the message file's name without ending
     * @throws java.util.MissingResourceException when the bundle has no such file
     */
    public static Words of(Class<?> owner, String name) {
        return new Words(
                ResourceBundle.getBundle("OSGI-INF.l10n." + name, Locale.getDefault(), owner.getClassLoader()));
    }

    /**
     * Returns the words for {@code key} with the values put in.
     *
     * @throws java.util.MissingResourceException when there are none, which is a broken build
     */
    public String get(String key, Object... values) {
        Object[] texts = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            texts[i] = Objects.toString(values[i]);
        }
        return new MessageFormat(bundle.getString(key), Locale.ROOT).format(texts);
    }

    public boolean has(String key) {
        return bundle.containsKey(key);
    }
}
