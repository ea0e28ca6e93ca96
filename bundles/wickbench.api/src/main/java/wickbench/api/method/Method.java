package wickbench.api.method;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.words.Coded;

/**
 * The site's written procedure for one kit and one sample route, as issued in one version.
 *
 * <p>The kit's own insert always governs.
 *
 * @param kit the kit that it is written for, by the site's name
 * @param insertRevision the revision of the kit's insert by which it is written, if stated
 * @param marks what is printed beside each line of the strip
 * @param positiveFrom what a positive starts from, if the kit states it; in the limit's unit
 * @param hookOnset from where the hook line fades, if known; in the limit's unit
 * @param faintTest competitive strips: how a faint test line is called; unstated it counts as not seen
 * @param storage where kits are kept, if stated
 * @param preChecks what is measured of a sample before it may be tested, with its range
 */
public record Method(
        MethodRef ref,
        String title,
        String kit,
        Optional<String> insertRevision,
        Target target,
        Format format,
        Map<LineRole, String> marks,
        Route route,
        Limit limit,
        Optional<BigDecimal> positiveFrom,
        Optional<BigDecimal> hookOnset,
        Optional<Seen> faintTest,
        Timing timing,
        Amounts amounts,
        Optional<Range> storage,
        List<PreCheck> preChecks,
        List<Step> steps,
        List<String> cautions) {

    public Method {
        marks = Map.copyOf(new EnumMap<>(marks));
        preChecks = List.copyOf(preChecks);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /**
     * What the strip detects.
     *
     * @param name for example hazelnut
     * @param basis what the limit is expressed as: marker protein, total protein, whole food …
     * @param factors how to get to another basis
     * @param notSeen what the strip does not see although it belongs to the allergen
     */
    public record Target(String name, Basis basis, List<Factor> factors, List<String> notSeen) {
        public Target {
            factors = List.copyOf(factors);
            notSeen = List.copyOf(notSeen);
        }
    }

    /** What a quantity of allergen is expressed as. */
    public enum Basis implements Coded {
        MARKER_PROTEIN,
        TOTAL_PROTEIN,
        WHOLE_FOOD_FRESH,
        WHOLE_FOOD_DRIED,
        GLUTEN
    }

    /** Multiply a quantity by {@code factor} to express it in {@code to}; the source says who found it. */
    public record Factor(Basis to, BigDecimal factor, String source) {}

    /**
     * The smallest amount that the method detects.
     *
     * @param holds whether it speaks of the liquid in the tube or of the sample
     * @param probability with which it is detected there, for example 0.95; unstated by many inserts
     */
    public record Limit(Quantity value, Holds holds, Optional<BigDecimal> probability) {}

    /** Of what a limit speaks. */
    public enum Holds implements Coded {
        IN_EXTRACT,
        IN_SAMPLE
    }

    /**
     * The clock of the method.
     *
     * @param develop from liquid on the strip to the earliest reading
     * @param window how long after that the strip may still be read
     * @param warmUp least time out of the cold before use
     * @param shake least shaking
     * @param extractHold longest time between extraction and start
     */
    public record Timing(
            Duration develop,
            Duration window,
            Optional<Duration> warmUp,
            Optional<Duration> shake,
            Optional<Duration> extractHold) {}

    /**
     * What is taken of the sample and into how much liquid.
     *
     * @param sample grams, millilitres or square centimetres, by the route
     * @param liquid millilitres added, if any
     */
    public record Amounts(Quantity sample, Optional<Quantity> liquid) {}

    /** A range, both ends included. */
    public record Range(BigDecimal low, BigDecimal high, Unit unit) {}

    /** A measurement that the sample must pass first, for example its pH. */
    public record PreCheck(String name, Range range) {}

    /**
     * A step in the site's own words.
     *
     * @param lasts how long it takes, where that matters
     * @param caution what to mind
     */
    public record Step(String text, Optional<Quantity> quantity, Optional<Duration> lasts, Optional<String> caution) {}
}
