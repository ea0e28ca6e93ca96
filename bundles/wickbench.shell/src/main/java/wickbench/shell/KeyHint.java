package wickbench.shell;

/**
 * A key of a page that stands on none of its buttons.
 *
 * @param key its name in the user's language, such as {@code F9}
 * @param does what it does, in a few words
 */
public record KeyHint(String key, String does) {}
