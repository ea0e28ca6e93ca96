package wickbench.widgets;

/**
 * How wide one column of a table would be, in pixels.
 *
 * @param wanted where there is room enough
 * @param least so that no word in it is cut off
 */
record ColumnWish(int wanted, int least) {}
