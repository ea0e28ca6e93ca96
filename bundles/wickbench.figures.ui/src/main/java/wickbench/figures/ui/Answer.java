package wickbench.figures.ui;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;

/**
 * What a sum answers: figures by the key of their name, the one that was asked for first, and a plot.
 *
 * @param figures at least one
 * @param charts at most one
 */
record Answer(List<Figure> figures, List<Chart> charts) {
    private static final MathContext FOR_PEOPLE = new MathContext(6);
    private static final int POINTS = 201;

    /** A number with its name. */
    record Figure(String name, double value) {
        /** Writes it as people read it, with six digits; a whole number keeps all of them. */
        String text() {
            BigDecimal exact = new BigDecimal(value);
            return value == Math.rint(value)
                    ? exact.toBigInteger().toString()
                    : exact.round(FOR_PEOPLE).stripTrailingZeros().toPlainString();
        }
    }

    static Answer of(String name, double value) {
        return new Answer(List.of(new Figure(name, value)), List.of());
    }

    Answer with(String name, double value) {
        List<Figure> more = new ArrayList<>(figures);
        more.add(new Figure(name, value));
        return new Answer(more, charts);
    }

    /** Plots a function over a stretch of x; the keys name the axes. */
    Answer plot(String x, String y, double from, double to, DoubleUnaryOperator of) {
        double[] along = new double[POINTS];
        double[] up = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            along[i] = from + (to - from) * i / (POINTS - 1);
            up[i] = of.applyAsDouble(along[i]);
        }
        Series line = new Series(FiguresUiWords.get(y), Series.Mark.LINE, along, up);
        Chart chart = new Chart(
                "",
                Axis.linear(FiguresUiWords.get(x), ""),
                Axis.linear(FiguresUiWords.get(y), ""),
                List.of(line),
                List.of());
        return new Answer(figures, List.of(chart));
    }
}
