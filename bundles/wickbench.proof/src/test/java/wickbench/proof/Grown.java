package wickbench.proof;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A tree in memory, for tests: its leaves, and the root of any stretch of them by the recursive definition of RFC 9162 §2.1.1. */
final class Grown implements Nodes<RuntimeException> {
    private final TreeHash hash = new TreeHash();
    private final List<byte[]> leaves = new ArrayList<>();

    static Grown of(int size) {
        Grown tree = new Grown();
        for (int i = 0; i < size; i++) {
            tree.add(Integer.toString(i).getBytes(StandardCharsets.US_ASCII));
        }
        return tree;
    }

    void add(byte[] entry) {
        leaves.add(hash.leaf(entry));
    }

    Digest leaf(long index) {
        return Digest.of(leaves.get((int) index));
    }

    Digest root(int size) {
        return Digest.of(recursive(0, size));
    }

    Tree<RuntimeException> tree() {
        return new Tree<>(this);
    }

    @Override
    public byte[] node(int level, long index) {
        return recursive((int) index << level, (int) (index + 1) << level);
    }

    private byte[] recursive(int from, int to) {
        if (to == from) {
            return hash.empty();
        }
        if (to - from == 1) {
            return leaves.get(from);
        }
        int split = Integer.highestOneBit(to - from - 1);
        return hash.node(recursive(from, from + split), recursive(from + split, to));
    }
}
