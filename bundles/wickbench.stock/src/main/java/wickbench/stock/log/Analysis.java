package wickbench.stock.log;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wickbench.figures.store.Spell;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;

/**
 * What the temperatures of a file mean, found while they stream by: excursions from several ranges, gaps, a thermometer that does
 * not move, how long it was how warm, and a trace to draw.
 *
 * <p>The usual interval is the median of the first {@value #FIRST}. More than three of them without a reading is a gap. A value that
 * stays the same for a day and at least {@value #STUCK_READINGS} readings shows nothing.
 */
public final class Analysis implements LogFile.Listener {
    private static final int FIRST = 500;
    private static final int GAP = 3;
    private static final int STUCK_READINGS = 20;
    private static final long STUCK_MS = 24 * 3_600_000L;
    private static final double HOUR = 3_600_000;
    private static final double HUNDREDTHS = 100;

    private final Map<Range, List<Watch>> watches = new LinkedHashMap<>();
    private final Excursions silences = new Excursions();
    private final Map<Long, Double> hours = new TreeMap<>();
    private final Sketch sketch = new Sketch();
    private final long[] firstTimes = new long[FIRST + 1];
    private final double[] firstValues = new double[FIRST + 1];
    private long rows;
    private long usual;
    private long from;
    private long last;
    private double value;
    private long sameSince;
    private long same;

    public Analysis(Set<Range> ranges) {
        ranges.forEach(range -> watches.put(range, Watch.over(range)));
    }

    @Override
    public void reading(long millis, double celsius) {
        if (rows <= FIRST) {
            firstTimes[(int) rows] = millis;
            firstValues[(int) rows] = celsius;
        }
        rows++;
        if (rows == FIRST + 1) {
            begin();
        } else if (rows > FIRST + 1) {
            next(millis, celsius);
        }
    }

    /** Says that there are no more readings. */
    public Analysis end() {
        if (rows > 0) {
            if (rows <= FIRST) {
                begin();
            }
            hold(last + usual);
            stuck();
            watches.values().forEach(all -> all.forEach(watch -> watch.end(last + usual)));
        }
        return this;
    }

    private void begin() {
        int known = (int) Math.min(rows, FIRST + 1L);
        usual = median(known);
        from = firstTimes[0];
        start(firstTimes[0], firstValues[0]);
        for (int i = 1; i < known; i++) {
            next(firstTimes[i], firstValues[i]);
        }
    }

    private long median(int known) {
        long[] intervals = new long[Math.max(1, known - 1)];
        for (int i = 1; i < known; i++) {
            intervals[i - 1] = firstTimes[i] - firstTimes[i - 1];
        }
        Arrays.sort(intervals);
        return intervals[intervals.length / 2];
    }

    private void start(long millis, double celsius) {
        last = millis;
        value = celsius;
        sameSince = millis;
        same = 1;
        sketch.add(millis, celsius);
    }

    private void next(long millis, double celsius) {
        boolean gap = millis - last > GAP * usual;
        long held = gap ? last + usual : millis;
        hold(held);
        if (gap) {
            watches.values().forEach(all -> all.forEach(watch -> watch.end(held)));
            silences.add(silence(Cause.GAP, last, millis));
        }
        if (gap || celsius != value) {
            stuck();
            sameSince = millis;
            same = 0;
        }
        same++;
        last = millis;
        value = celsius;
        sketch.add(millis, celsius);
    }

    private void hold(long until) {
        hours.merge(Math.round(value * HUNDREDTHS), (until - last) / HOUR, Double::sum);
        watches.values().forEach(all -> all.forEach(watch -> watch.spell(last, until, value)));
    }

    private void stuck() {
        if (last - sameSince >= STUCK_MS && same >= STUCK_READINGS) {
            silences.add(silence(Cause.STUCK, sameSince, last));
        }
    }

    private Excursion silence(Cause cause, long start, long end) {
        return new Excursion(cause, Instant.ofEpochMilli(start), Instant.ofEpochMilli(end), value, 0);
    }

    public long rows() {
        return rows;
    }

    public Instant from() {
        return Instant.ofEpochMilli(from);
    }

    public Instant to() {
        return Instant.ofEpochMilli(last);
    }

    /** Returns the usual time between two readings, in seconds. */
    public long usualSeconds() {
        return usual / 1000;
    }

    /** Returns everything outside a range, gaps and stuck spells among it, in the order of time. */
    public List<Excursion> outside(Range range) {
        List<Excursion> all = new ArrayList<>(silences.kept());
        watches.get(range).forEach(watch -> all.addAll(watch.found().kept()));
        all.sort(Comparator.comparing(Excursion::from).thenComparing(Excursion::cause));
        return all;
    }

    /** Returns how many more there are than {@link #outside} returns, where they are too many to keep. */
    public long leftOut(Range range) {
        return silences.leftOut()
                + watches.get(range).stream()
                        .mapToLong(watch -> watch.found().leftOut())
                        .sum();
    }

    /** Returns how long it was how warm, to a hundredth of a degree; times at a temperature of 0 length are left out. */
    public List<Spell> spells() {
        return hours.entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .map(each -> new Spell(each.getValue(), each.getKey() / HUNDREDTHS))
                .toList();
    }

    public Sketch sketch() {
        return sketch;
    }
}
