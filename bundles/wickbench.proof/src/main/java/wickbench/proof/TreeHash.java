package wickbench.proof;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hashes of RFC 9162 §2.1.1, as raw bytes for those who make millions of them; for one thread. */
public final class TreeHash {
    private static final byte LEAF = 0;
    private static final byte NODE = 1;
    private final MessageDigest sha256;

    public TreeHash() {
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Returns the root of the tree without leaves. */
    public byte[] empty() {
        return sha256.digest();
    }

    public byte[] leaf(byte[] bytes) {
        return leaf(bytes, 0, bytes.length);
    }

    /** Returns the hash of a leaf that stands somewhere in a larger array. */
    public byte[] leaf(byte[] bytes, int from, int length) {
        sha256.update(LEAF);
        sha256.update(bytes, from, length);
        return sha256.digest();
    }

    public byte[] node(byte[] left, byte[] right) {
        sha256.update(NODE);
        sha256.update(left);
        sha256.update(right);
        return sha256.digest();
    }

    /** Returns the plain hash, without a mark before it. */
    byte[] plain(byte[] bytes) {
        return sha256.digest(bytes);
    }
}
