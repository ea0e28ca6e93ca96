package wickbench.widgets;

/** The shape that says, beside word and colour, what is meant. */
public enum Shape {
    /** An open ring. */
    RING,
    /** A filled disc. */
    DISC,
    /** A triangle standing on its point's opposite side. */
    TRIANGLE,
    /** Two triangles, one over the other. */
    DOUBLE_TRIANGLE,
    /** A cross. */
    CROSS,
    /** A square. */
    SQUARE,
    /** A square on its corner. */
    DIAMOND,
    /** A bar lying down. */
    BAR
}
