package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickbench.api.json.Json;
import wickbench.figures.NoAnswer;
import wickbench.figures.trend.RunLength;

/** How long a chart runs before it signals. */
final class RunLengthSum {
    private static final String CHART = "chart";
    private static final double SHOWN = 3;
    /** Each takes an integral equation. */
    private static final int POINTS = 31;

    private RunLengthSum() {}

    static Sum sum() {
        return Sum.of(
                "run-length",
                Topic.TREND,
                List.of(
                        Input.choice(CHART, List.of("limits", "cusum", "ewma")).like("cusum"),
                        Input.number("k").usual("0.5").only(CHART, "cusum"),
                        Input.number("h").usual("5").only(CHART, "cusum"),
                        Input.number("lambda").usual("0.2").only(CHART, "ewma"),
                        Input.number("L").usual("3").only(CHART, "ewma", "limits"),
                        Input.numbers("shift").usual("0,0.5,1,1.5,2,3")),
                RunLengthSum::answer);
    }

    private static Answer answer(Given given) {
        DoubleUnaryOperator length = length(given);
        double still = length.applyAsDouble(0);
        double moved = length.applyAsDouble(1);
        return Answer.of()
                .with("inControl", still)
                .with("oneSigma", moved)
                .with(
                        "shifts",
                        Json.array(Arrays.stream(given.numbers("shift"))
                                .mapToObj(shift -> Json.object()
                                        .with("shift", Answer.number(shift))
                                        .with("points", Answer.number(length.applyAsDouble(shift))))
                                .toList()))
                .inWords("run-length.result", Answer.forPeople(still), Answer.forPeople(moved))
                .by("run-length." + given.text(CHART).orElse(""))
                .minding("run-length.normal")
                .plotted(() -> Plots.chart(
                        Plots.axis("shift"),
                        Plots.logarithm("run-length"),
                        Plots.curve("run-length", POINTS, 0, SHOWN, shift -> orNothing(length, shift))));
    }

    private static DoubleUnaryOperator length(Given given) {
        return switch (given.text(CHART).orElse("")) {
            case "cusum" -> {
                double k = given.number("k");
                double h = given.number("h");
                yield shift -> RunLength.cusum(k, h, shift);
            }
            case "ewma" -> {
                double weight = given.number("lambda");
                double width = given.number("L");
                yield shift -> RunLength.ewma(weight, width, shift);
            }
            default -> {
                double width = given.number("L");
                yield shift -> RunLength.limits(width, shift);
            }
        };
    }

    /** A run too long to be told leaves a gap in the curve. */
    private static double orNothing(DoubleUnaryOperator length, double shift) {
        try {
            return length.applyAsDouble(shift);
        } catch (NoAnswer none) {
            return Double.NaN;
        }
    }
}
