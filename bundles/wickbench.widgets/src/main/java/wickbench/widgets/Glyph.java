package wickbench.widgets;

/** A small drawing of our own, on a square of 24 by 24. */
@FunctionalInterface
public interface Glyph {

    /** Side of the square that a glyph is drawn on. */
    int SIDE = 24;

    void draw(Pen pen);
}
