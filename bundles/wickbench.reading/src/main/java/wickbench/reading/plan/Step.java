package wickbench.reading.plan;

/**
 * The last piece of work of an order, and those before it.
 *
 * @param before null at the first
 * @param move a kind to start a strip of, or -1 less a kind to read a strip of
 */
record Step(Step before, int move) {

    boolean isLook() {
        return move < 0;
    }

    int kind() {
        return isLook() ? -1 - move : move;
    }
}
