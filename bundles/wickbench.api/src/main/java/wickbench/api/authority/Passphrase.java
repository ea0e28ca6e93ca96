package wickbench.api.authority;

import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;

/** A secret that somebody typed; never printed, and wiped when it has been used. */
public final class Passphrase implements AutoCloseable {
    private final char[] characters;

    private Passphrase(char[] characters) {
        this.characters = characters;
    }

    /** Takes the characters over; the caller's array is wiped. */
    public static Passphrase of(char[] typed) {
        Passphrase taken = new Passphrase(typed.clone());
        Arrays.fill(typed, '\0');
        return taken;
    }

    /** Returns how many characters there are. */
    public int length() {
        return Character.codePointCount(characters, 0, characters.length);
    }

    /** Returns how many different characters there are. */
    public long variety() {
        return CharBuffer.wrap(characters).chars().distinct().count();
    }

    /** Tells whether a word stands in it, in whatever case. */
    public boolean contains(String word) {
        return new String(characters)
                .toLowerCase(java.util.Locale.ROOT)
                .contains(word.toLowerCase(java.util.Locale.ROOT));
    }

    public boolean same(Passphrase other) {
        return Arrays.equals(characters, other.characters);
    }

    /** Returns UTF-8 in the form NFKC (NIST SP 800-63B §5.1.1.2), so that every keyboard gives the same bytes. */
    public byte[] bytes() {
        CharSequence text = CharBuffer.wrap(characters);
        return Normalizer.normalize(text, Normalizer.Form.NFKC).getBytes(StandardCharsets.UTF_8);
    }

    /** Wipes the characters. */
    @Override
    public void close() {
        Arrays.fill(characters, '\0');
    }

    @Override
    public String toString() {
        return "passphrase";
    }
}
