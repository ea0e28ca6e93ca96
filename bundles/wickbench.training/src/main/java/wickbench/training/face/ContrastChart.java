package wickbench.training.face;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.figures.Limits;
import wickbench.figures.proportion.Interval;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.book.TrainingWords;

/** How often a line was called, against its contrast, where contrasts were measured; all readers together. */
final class ContrastChart {
    private static final double LEVEL = 0.95;

    private ContrastChart() {}

    /**
     * What was called at one contrast.
     *
     * @param called with a test line, of so many calls
     */
    record Step(double contrast, int called, int of) {}

    /** Returns the chart; empty where fewer than two contrasts are known, which is no curve. */
    static Optional<Chart> of(Round round, RoundKey key) {
        List<Step> steps = steps(round, key);
        return steps.size() < 2 ? Optional.empty() : Optional.of(chart(steps));
    }

    /** Returns one for each contrast of the round that anybody called, ascending. */
    static List<Step> steps(Round round, RoundKey key) {
        TreeMap<BigDecimal, int[]> counts = new TreeMap<>();
        for (RoundKey.Sealed strip : key.strips()) {
            strip.contrast()
                    .ifPresent(contrast -> round.plan().readers().stream()
                            .flatMap(reader -> round.callsOf(reader).stream())
                            .filter(call -> call.code().equals(strip.code()))
                            .forEach(call -> {
                                int[] count = counts.computeIfAbsent(contrast, first -> new int[2]);
                                count[0] += call.strip().test().there() ? 1 : 0;
                                count[1]++;
                            }));
        }
        List<Step> steps = new ArrayList<>();
        counts.forEach((contrast, count) -> steps.add(new Step(contrast.doubleValue(), count[0], count[1])));
        return steps;
    }

    private static Chart chart(List<Step> steps) {
        return new Chart(
                TrainingWords.get("chart.contrast"),
                Axis.linear(TrainingWords.get("chart.contrast.axis"), "%"),
                Axis.linear(TrainingWords.get("chart.contrast.called"), "%"),
                List.of(
                        series(
                                "chart.upper",
                                Series.Mark.POINTS,
                                steps,
                                step -> limits(step).upper()),
                        series(
                                "chart.share",
                                Series.Mark.LINE_AND_POINTS,
                                steps,
                                step -> (double) step.called() / step.of()),
                        series(
                                "chart.lower",
                                Series.Mark.POINTS,
                                steps,
                                step -> limits(step).lower())),
                List.of());
    }

    private static Limits limits(Step step) {
        return Interval.EXACT.of(step.called(), step.of(), LEVEL);
    }

    private static Series series(String name, Series.Mark mark, List<Step> steps, ToDoubleFunction<Step> of) {
        return new Series(
                TrainingWords.get(name),
                mark,
                steps.stream().mapToDouble(Step::contrast).toArray(),
                steps.stream().mapToDouble(step -> 100 * of.applyAsDouble(step)).toArray());
    }
}
