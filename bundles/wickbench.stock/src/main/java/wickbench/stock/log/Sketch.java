package wickbench.stock.log;

import java.util.ArrayList;
import java.util.List;

/**
 * A trace thin enough to be kept: the lowest and highest reading of stretches of equal length, which double whenever there would be
 * more than {@value #MOST}.
 */
public final class Sketch {
    static final int MOST = 2_000;
    private static final long TEN_MINUTES = 600_000;

    private List<Stretch> stretches = new ArrayList<>();
    private long width = TEN_MINUTES;

    /**
     * The readings of a stretch.
     *
     * @param place counted in widths from 1970
     */
    public record Stretch(long place, double low, double high) {

        private Stretch with(Stretch other) {
            return new Stretch(place, Math.min(low, other.low), Math.max(high, other.high));
        }
    }

    void add(long millis, double celsius) {
        put(stretches, new Stretch(Math.floorDiv(millis, width), celsius, celsius));
        while (stretches.size() > MOST) {
            coarsen();
        }
    }

    private void coarsen() {
        List<Stretch> wider = new ArrayList<>();
        stretches.forEach(each -> put(wider, new Stretch(Math.floorDiv(each.place(), 2), each.low(), each.high())));
        stretches = wider;
        width *= 2;
    }

    private static void put(List<Stretch> all, Stretch next) {
        int end = all.size() - 1;
        if (end >= 0 && all.get(end).place() == next.place()) {
            all.set(end, all.get(end).with(next));
        } else {
            all.add(next);
        }
    }

    /** Returns the length of a stretch in seconds. */
    public long widthSeconds() {
        return width / 1000;
    }

    public List<Stretch> stretches() {
        return List.copyOf(stretches);
    }
}
