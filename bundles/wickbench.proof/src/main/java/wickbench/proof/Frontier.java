package wickbench.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The right edge of a Merkle tree: the roots of its complete subtrees, all that is needed to add leaves and to know the root.
 *
 * <p>A tree of n leaves has one such subtree for each bit set in n, larger ones to the left (RFC 9162 §2.1.2 splits there
 * too). For one thread.
 */
public final class Frontier {
    private final TreeHash hash;
    private final byte[][] peaks;
    private long size;

    /** Begins with the empty tree. */
    public Frontier() {
        this(new TreeHash(), new byte[Long.SIZE][], 0);
    }

    private Frontier(TreeHash hash, byte[][] peaks, long size) {
        this.hash = hash;
        this.peaks = peaks;
        this.size = size;
    }

    /** Returns one that grows by itself; both are for the same thread. */
    public Frontier copy() {
        return new Frontier(hash, peaks.clone(), size);
    }

    public long size() {
        return size;
    }

    /** Adds a leaf by its hash. */
    public void add(byte[] leaf) {
        int level = 0;
        byte[] node = leaf;
        while (has(level)) {
            node = hash.node(peaks[level], node);
            level++;
        }
        peaks[level] = node;
        size++;
    }

    public Digest root() {
        Optional<byte[]> root = Optional.empty();
        for (int level = 0; level < peaks.length; level++) {
            if (has(level)) {
                byte[] left = peaks[level];
                root = Optional.of(root.map(right -> hash.node(left, right)).orElse(left));
            }
        }
        return Digest.of(root.orElseGet(hash::empty));
    }

    /** Returns the subtrees' roots, the largest subtree first. */
    public List<Digest> peaks() {
        List<Digest> found = new ArrayList<>();
        for (int level = peaks.length - 1; level >= 0; level--) {
            if (has(level)) {
                found.add(Digest.of(peaks[level]));
            }
        }
        return found;
    }

    /** Returns the frontier with these subtrees; empty when a tree of that size has not as many. */
    public static Optional<Frontier> of(long size, List<Digest> peaks) {
        if (size < 0 || Long.bitCount(size) != peaks.size()) {
            return Optional.empty();
        }
        Frontier frontier = new Frontier();
        frontier.size = size;
        int next = 0;
        for (int level = frontier.peaks.length - 1; level >= 0; level--) {
            if (frontier.has(level)) {
                frontier.peaks[level] = peaks.get(next++).bytes();
            }
        }
        return Optional.of(frontier);
    }

    private boolean has(int level) {
        return (size >>> level & 1) == 1;
    }
}
