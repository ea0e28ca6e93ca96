package wickbench.proof;

import java.util.HexFormat;

/**
 * A SHA-256 hash: of a leaf, of a node, or of a key.
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record Digest(String hex) {
    /** Bytes of a hash. */
    public static final int SIZE = 32;

    public Digest {
        if (hex.length() != 2 * SIZE || !hex.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'a' && c <= 'f')) {
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
