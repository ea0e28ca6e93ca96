package wickbench.proof;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;

/** An Ed25519 public key (RFC 8032) that proves what a station signed. */
public final class OpenKey {
    public static final int BYTES = 32;

    /** What stands before the raw key in its X.509 form (RFC 8410). */
    private static final byte[] X509 = HexFormat.of().parseHex("302a300506032b6570032100");

    private final byte[] raw;
    private final PublicKey key;

    private OpenKey(byte[] raw, PublicKey key) {
        this.raw = raw;
        this.key = key;
    }

    /** Takes the platform's own form of such a key. */
    public static OpenKey of(PublicKey key) {
        byte[] encoded = key.getEncoded();
        return new OpenKey(Arrays.copyOfRange(encoded, X509.length, encoded.length), key);
    }

    /** Reads the raw key as base64 (RFC 4648 §4, padded); empty when it is none. */
    public static Optional<OpenKey> parse(String base64) {
        try {
            byte[] raw = Base64.getDecoder().decode(base64);
            return raw.length == BYTES ? Optional.of(of(raw)) : Optional.empty();
        } catch (IllegalArgumentException | GeneralSecurityException e) {
            return Optional.empty();
        }
    }

    private static OpenKey of(byte[] raw) throws GeneralSecurityException {
        byte[] encoded = Arrays.copyOf(X509, X509.length + BYTES);
        System.arraycopy(raw, 0, encoded, X509.length, BYTES);
        return new OpenKey(raw, KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(encoded)));
    }

    public String base64() {
        return Base64.getEncoder().encodeToString(raw);
    }

    /** Returns the 32 bytes of RFC 8032 §5.1.5. */
    public byte[] raw() {
        return raw.clone();
    }

    /** Returns SHA-256 of the raw key, by which people compare keys. */
    public Digest fingerprint() {
        return Digest.of(new TreeHash().plain(raw));
    }

    /** Tells whether this key made a signature over a message. */
    public boolean signed(byte[] message, byte[] signature) {
        try {
            Signature check = Signature.getInstance("Ed25519");
            check.initVerify(key);
            check.update(message);
            return check.verify(signature);
        } catch (GeneralSecurityException e) {
            // a signature that cannot be decoded, or a key that is no point of the curve
            return false;
        }
    }
}
