package wickbench.parts.archive;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/** Keys as text (RFC 7468), the form that other tools read and write too. */
final class Pem {
    static final String PUBLIC = "PUBLIC KEY";
    static final String PRIVATE = "PRIVATE KEY";
    private static final int LINE = 64;

    private Pem() {}

    static String of(String label, byte[] encoded) {
        String base64 = Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(encoded);
        return "-----BEGIN " + label + "-----\n" + base64 + "\n-----END " + label + "-----\n";
    }

    /** Returns what is encoded in a text that holds just one such key. */
    static Optional<byte[]> read(String label, String text) {
        String begin = "-----BEGIN " + label + "-----";
        String end = "-----END " + label + "-----";
        String plain = text.strip();
        if (plain.length() < begin.length() + end.length() || !plain.startsWith(begin) || !plain.endsWith(end)) {
            return Optional.empty();
        }
        String base64 = plain.substring(begin.length(), plain.length() - end.length());
        try {
            return Optional.of(Base64.getMimeDecoder().decode(base64.getBytes(StandardCharsets.US_ASCII)));
        } catch (IllegalArgumentException notBase64) {
            return Optional.empty();
        }
    }
}
