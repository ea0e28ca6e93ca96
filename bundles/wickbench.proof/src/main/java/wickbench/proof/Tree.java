package wickbench.proof;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes the proofs of a tree whose whole subtrees are at hand; for one thread.
 *
 * <p>A proof over n leaves asks for at most 3 log₂ n of them. Whoever believes what is handed out need not: each proof can be
 * checked by {@link Inclusion#proves} and {@link Consistency#proves}.
 *
 * @param <E> what may go wrong while a subtree is read
 */
public final class Tree<E extends Exception> {
    private final TreeHash hash = new TreeHash();
    private final Nodes<E> nodes;

    public Tree(Nodes<E> nodes) {
        this.nodes = nodes;
    }

    /** Returns the root over the first leaves. */
    public Digest root(long size) throws E {
        return Digest.of(size == 0 ? hash.empty() : range(0, size));
    }

    /**
     * Proves that a leaf is among the first {@code size}.
     *
     * @throws IllegalArgumentException when it is not
     */
    public Inclusion inclusion(long index, long size) throws E {
        if (index < 0 || index >= size) {
            throw new IllegalArgumentException("leaf " + index + " is not among the first " + size);
        }
        List<Digest> path = new ArrayList<>();
        inclusion(index, 0, size, path);
        return new Inclusion(index, size, path);
    }

    /** PATH of RFC 9162 §2.1.3.1, over the leaves from {@code low} to before {@code high}. */
    private void inclusion(long index, long low, long high, List<Digest> path) throws E {
        if (high - low == 1) {
            return;
        }
        long middle = low + split(high - low);
        if (index < middle) {
            inclusion(index, low, middle, path);
            path.add(Digest.of(range(middle, high)));
        } else {
            inclusion(index, middle, high, path);
            path.add(Digest.of(range(low, middle)));
        }
    }

    /**
     * Proves that the first {@code older} leaves are the beginning of the first {@code newer}.
     *
     * @throws IllegalArgumentException when there are fewer of the newer
     */
    public Consistency consistency(long older, long newer) throws E {
        if (older < 0 || older > newer) {
            throw new IllegalArgumentException(newer + " leaves do not begin with " + older);
        }
        List<Digest> path = new ArrayList<>();
        if (older > 0) {
            consistency(older, 0, newer, true, path);
        }
        return new Consistency(older, newer, path);
    }

    /**
     * SUBPROOF of RFC 9162 §2.1.4.1.
     *
     * @param known whether these leaves are the whole older tree, whose root the other side has
     */
    private void consistency(long older, long low, long high, boolean known, List<Digest> path) throws E {
        if (older == high) {
            if (!known) {
                path.add(Digest.of(range(low, high)));
            }
            return;
        }
        long middle = low + split(high - low);
        if (older <= middle) {
            consistency(older, low, middle, known, path);
            path.add(Digest.of(range(middle, high)));
        } else {
            consistency(older, middle, high, false, path);
            path.add(Digest.of(range(low, middle)));
        }
    }

    /** Returns the root over leaves whose first place is a multiple of the largest whole subtree among them. */
    private byte[] range(long low, long high) throws E {
        long size = high - low;
        if (Long.bitCount(size) == 1) {
            int level = Long.numberOfTrailingZeros(size);
            return nodes.node(level, low >>> level);
        }
        long middle = low + split(size);
        return hash.node(range(low, middle), range(middle, high));
    }

    /** Returns the largest power of two below a number of leaves. */
    private static long split(long size) {
        return Long.highestOneBit(size - 1);
    }
}
