package wickbench.drill;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wickbench.api.words.Coded;
import wickbench.figures.seeing.LeastEntropy;

/**
 * What a drill found; contrasts are parts of the luminance, chances go from 0 to 1.
 *
 * @param strips how many were shown
 * @param threshold the contrast at which half of the lines that can be seen are seen
 * @param lower lower limit of the threshold
 * @param upper upper limit; both hold with {@code confidence}
 * @param slope how fast seeing grows, per decade of contrast
 * @param guess chance to see a line where there is none, as believed after all answers
 * @param lapse chance to miss a plain line, as believed after all answers
 * @param blanks strips without a line
 * @param alarms how many of them were called with one
 * @param plain strips with a plain line
 * @param missed how many of them were called without
 * @param tallies the other strips, by contrast from the faintest
 * @param cautions what to mind
 */
public record DrillResult(
        int strips,
        double threshold,
        double lower,
        double upper,
        double confidence,
        double slope,
        double guess,
        double lapse,
        int blanks,
        int alarms,
        int plain,
        int missed,
        List<Tally> tallies,
        Set<Caution> cautions) {
    /** More than this part of the blanks called with a line, or of the plain lines missed, and the threshold says little. */
    private static final double TOO_MANY = 0.25;

    /** Lines of one contrast. */
    public record Tally(double contrast, int shown, int seen) {}

    /** What makes a threshold doubtful. */
    public enum Caution implements Coded {
        /** Too many lines seen where none were. */
        ALARMS,
        /** Too many plain lines missed. */
        LAPSES,
        /** The limits are wider than the drill is meant to end with. */
        WIDE,
        /** The threshold may be fainter than anything shown. */
        FAINTER,
        /** The threshold may be stronger than anything shown. */
        STRONGER
    }

    public DrillResult {
        tallies = List.copyOf(tallies);
        cautions = Set.copyOf(cautions);
    }

    static DrillResult of(Drill drill) {
        LeastEntropy belief = drill.belief();
        double lower = drill.contrastAt(Drill.tail());
        double upper = drill.contrastAt(1 - Drill.tail());
        int blanks = count(drill, Shown.Kind.BLANK, answer -> true);
        int alarms = count(drill, Shown.Kind.BLANK, Drill.Answer::seen);
        int plain = count(drill, Shown.Kind.PLAIN, answer -> true);
        int missed = count(drill, Shown.Kind.PLAIN, answer -> !answer.seen());
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        put(cautions, Caution.ALARMS, alarms > TOO_MANY * blanks);
        put(cautions, Caution.LAPSES, missed > TOO_MANY * plain);
        put(cautions, Caution.WIDE, !drill.narrow());
        put(cautions, Caution.FAINTER, lower < DrillPlan.FAINTEST * Math.sqrt(DrillPlan.step()));
        put(cautions, Caution.STRONGER, upper > DrillPlan.PLAIN / Math.sqrt(DrillPlan.step()));
        return new DrillResult(
                drill.answers().size(),
                drill.contrastAt(0.5),
                lower,
                upper,
                Drill.CONFIDENCE,
                belief.slope(),
                belief.guess(),
                belief.lapse(),
                blanks,
                alarms,
                plain,
                missed,
                tallies(drill),
                cautions);
    }

    /** Returns the chance to call a line of a contrast seen, by the curve of this reader. */
    public double seen(double contrast) {
        double steps = slope * Math.log10(contrast / threshold);
        return guess + (1 - guess - lapse) / (1 + Math.exp(-steps));
    }

    private static List<Tally> tallies(Drill drill) {
        TreeMap<Double, List<Drill.Answer>> byContrast = drill.answers().stream()
                .filter(answer -> answer.shown().kind() == Shown.Kind.FAINT)
                .collect(Collectors.groupingBy(answer -> answer.shown().contrast(), TreeMap::new, Collectors.toList()));
        return byContrast.entrySet().stream()
                .map(each -> new Tally(each.getKey(), each.getValue().size(), (int)
                        each.getValue().stream().filter(Drill.Answer::seen).count()))
                .toList();
    }

    private static int count(Drill drill, Shown.Kind kind, Predicate<Drill.Answer> which) {
        return (int) drill.answers().stream()
                .filter(answer -> answer.shown().kind() == kind)
                .filter(which)
                .count();
    }

    private static void put(Set<Caution> cautions, Caution caution, boolean holds) {
        if (holds) {
            cautions.add(caution);
        }
    }
}
