package wickbench.proof;

/**
 * The whole subtrees of a tree, from wherever they are kept.
 *
 * @param <E> what may go wrong while one is read
 */
@FunctionalInterface
public interface Nodes<E extends Exception> {

    /**
     * Returns the root of the subtree over the leaves from {@code index << level} on, {@code 1 << level} of them.
     *
     * @param level 0 for a leaf
     */
    byte[] node(int level, long index) throws E;
}
