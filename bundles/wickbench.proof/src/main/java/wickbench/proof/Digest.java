package wickbench.proof;

import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * A SHA-256 hash: of a leaf, of a node, or of a key.
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record Digest(String hex) {
    static final int BYTES = 32;
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{64}");

    public Digest {
        if (!FORM.matcher(hex).matches()) {
            throw new IllegalArgumentException("expected 64 lower-case hexadecimal digits, found '" + hex + "'");
        }
    }

    /** Returns the hash that these 32 bytes are. */
    public static Digest of(byte[] bytes) {
        return new Digest(HexFormat.of().formatHex(bytes));
    }

    public byte[] bytes() {
        return HexFormat.of().parseHex(hex);
    }

    @Override
    public String toString() {
        return hex;
    }
}
