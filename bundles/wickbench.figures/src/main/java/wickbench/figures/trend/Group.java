package wickbench.figures.trend;

import wickbench.figures.Inputs;

/**
 * How many of a group had the event that is counted.
 *
 * @param count 0 to {@code size}
 * @param size the group, at least 1
 */
public record Group(long count, long size) {
    public Group {
        Inputs.size("size", size);
        Inputs.part("count", count, "size", size);
    }

    /** Returns count ÷ size. */
    public double share() {
        return (double) count / size;
    }
}
