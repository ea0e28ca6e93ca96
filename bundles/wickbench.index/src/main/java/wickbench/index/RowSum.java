package wickbench.index;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.Set;

/** The sum of the SHA-256 of each row, whatever their order; for one thread. */
final class RowSum {
    private final MessageDigest sha256;
    private final Set<BigInteger> seen = new HashSet<>();
    private boolean remembers;
    private long rows;
    private BigInteger sum = BigInteger.ZERO;

    RowSum() {
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Keeps each row's hash too, so that {@link #holds} can tell. */
    RowSum remembering() {
        remembers = true;
        return this;
    }

    void add(String[] row) {
        BigInteger hash = hash(row);
        rows++;
        sum = sum.add(hash);
        if (remembers) {
            seen.add(hash);
        }
    }

    boolean holds(String[] row) {
        return seen.contains(hash(row));
    }

    private BigInteger hash(String[] row) {
        for (String value : row) {
            byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
            // with its length, so that no text can look like the next column
            sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, bytes.length));
            sha256.update(bytes);
        }
        return new BigInteger(1, sha256.digest());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RowSum that && rows == that.rows && sum.equals(that.sum);
    }

    @Override
    public int hashCode() {
        return sum.hashCode();
    }
}
