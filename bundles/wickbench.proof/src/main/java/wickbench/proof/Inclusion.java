package wickbench.proof;

import java.util.List;

/**
 * A proof that one leaf is in a tree: the hashes that lead from it to the root (RFC 9162 §2.1.3).
 *
 * @param index the place of the leaf, from 0
 * @param size leaves of the tree
 * @param path from the leaf's neighbour up to the root's child
 */
public record Inclusion(long index, long size, List<Digest> path) {
    public Inclusion {
        path = List.copyOf(path);
    }

    /** Tells whether this leads from a leaf to a root, by the steps of RFC 9162 §2.1.3.2. */
    public boolean proves(Digest leaf, Digest root) {
        if (index < 0 || index >= size) {
            return false;
        }
        Climb climb = new Climb(index, size - 1);
        byte[] node = leaf.bytes();
        for (Digest step : path) {
            if (climb.atTop()) {
                return false;
            }
            node = climb.fromRight() ? climb.join(step.bytes(), node) : climb.join(node, step.bytes());
            climb.up();
        }
        return climb.atTop() && Digest.of(node).equals(root);
    }
}
