package wickbench.figures.store;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * Temperatures read at stated times, as a logger does.
 *
 * <p>A reading holds until the next, the last one for the usual (median) interval; so equal intervals weigh equally. An interval
 * longer than the longest allowed is a gap: the reading before it holds for the usual interval, what remains is not covered and is
 * reported, never filled in.
 *
 * @param spells what the readings cover
 * @param gaps how many gaps there are
 * @param uncovered the hours in the gaps
 * @param longestGap the uncovered hours of the longest gap
 */
public record Trace(List<Spell> spells, int gaps, double uncovered, double longestGap) {
    private static final double GAP = 3;
    private static final double HOUR = Duration.ofHours(1).toMillis();

    public Trace {
        spells = List.copyOf(spells);
    }

    /**
     * A temperature at a time.
     *
     * @param at when
     * @param celsius −100 to 150 °C
     */
    public record Reading(Instant at, double celsius) {
        public Reading {
            new Spell(1, celsius);
        }
    }

    /** Takes an interval of more than three usual ones for a gap. */
    public static Trace of(List<Reading> readings) {
        return of(readings, GAP * median(intervals(readings)));
    }

    /**
     * Lays out at least two readings, each later than the one before.
     *
     * @param longest the hours of the longest interval that is not a gap
     */
    public static Trace of(List<Reading> readings, double longest) {
        Inputs.positive("gap", longest);
        double[] intervals = intervals(readings);
        double usual = Math.min(longest, median(intervals));
        List<Spell> spells = new ArrayList<>();
        int gaps = 0;
        double uncovered = 0;
        double longestGap = 0;
        for (int i = 0; i < intervals.length; i++) {
            boolean gap = intervals[i] > longest;
            spells.add(new Spell(gap ? usual : intervals[i], readings.get(i).celsius()));
            double open = gap ? intervals[i] - usual : 0;
            gaps += gap ? 1 : 0;
            uncovered += open;
            longestGap = Math.max(longestGap, open);
        }
        spells.add(new Spell(usual, readings.get(intervals.length).celsius()));
        return new Trace(spells, gaps, uncovered, longestGap);
    }

    private static double[] intervals(List<Reading> readings) {
        if (readings.size() < 2) {
            throw NoAnswer.of("", "warmth.one-reading");
        }
        double[] hours = new double[readings.size() - 1];
        for (int i = 0; i < hours.length; i++) {
            hours[i] =
                    Duration.between(readings.get(i).at(), readings.get(i + 1).at())
                                    .toMillis()
                            / HOUR;
            if (hours[i] <= 0) {
                throw NoAnswer.of("timestamp", "warmth.not-later").inRow(i + 1);
            }
        }
        return hours;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
