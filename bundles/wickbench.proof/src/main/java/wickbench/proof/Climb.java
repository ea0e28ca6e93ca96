package wickbench.proof;

/** The way up a tree along a node and along its right edge, as RFC 9162 §2.1.3.2 and §2.1.4.2 walk it. */
final class Climb {
    private final TreeHash hash = new TreeHash();
    private long node;
    private long edge;

    /**
     * @param node the place of a node on its level
     * @param edge the place of the last node on that level
     */
    Climb(long node, long edge) {
        this.node = node;
        this.edge = edge;
    }

    /** Tells whether only one node is left, which is the root. */
    boolean atTop() {
        return edge == 0;
    }

    /** Tells whether the next hash of the proof stands to the left. */
    boolean fromRight() {
        return isRight() || node == edge;
    }

    private boolean isRight() {
        return (node & 1) == 1;
    }

    /** Goes up one level from below the top; a node without a neighbour to its right goes on to where it is a right child. */
    void up() {
        if (fromRight()) {
            // below the top the last node of a level is not the first one, so it comes to be a right child
            while (!isRight()) {
                shift();
            }
        }
        shift();
    }

    /** Goes up while the node is a right child, to where the subtree that it ends is whole. */
    void toWholeSubtree() {
        while (isRight()) {
            shift();
        }
    }

    byte[] join(byte[] left, byte[] right) {
        return hash.node(left, right);
    }

    private void shift() {
        node >>>= 1;
        edge >>>= 1;
    }
}
