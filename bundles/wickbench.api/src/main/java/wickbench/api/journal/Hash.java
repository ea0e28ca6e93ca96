package wickbench.api.journal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A SHA-256 hash.
 *
 * @param hex 64 lower-case hexadecimal digits
 */
public record Hash(String hex) {
    private static final int BYTES = 32;

    public Hash {
        if (hex.length() != 2 * BYTES || !isLowerHex(hex)) {
            throw new IllegalArgumentException("expected 64 lower-case hexadecimal digits, found '" + hex + "'");
        }
    }

    /** A plain loop, for an index is rebuilt from millions of hashes. */
    private static boolean isLowerHex(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < '0' || c > '9') && (c < 'a' || c > 'f')) {
                return false;
            }
        }
        return true;
    }

    public static Hash of(byte[] bytes) {
        return new Hash(HexFormat.of().formatHex(bytes));
    }

    /** Returns the SHA-256 of some bytes. */
    public static Hash ofContent(byte[] content) {
        return of(sha256().digest(content));
    }

    /** Returns the SHA-256 of a text's UTF-8 bytes. */
    public static Hash ofContent(String content) {
        return ofContent(content.getBytes(StandardCharsets.UTF_8));
    }

    public byte[] bytes() {
        return HexFormat.of().parseHex(hex);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return hex;
    }
}
