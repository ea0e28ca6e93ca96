package wickbench.figures.sums;

import java.util.List;
import java.util.function.Function;
import wickbench.api.json.Json;
import wickbench.figures.trend.Cusum;
import wickbench.figures.trend.LimitChart;
import wickbench.figures.trend.Point;
import wickbench.figures.trend.Signal;
import wickbench.figures.trend.TimeChart;

/** Charts as answers: the centre, limits where they are the same for all points, signals in words, then the points. */
final class TrendAnswers {
    private static final int SIGMAS = 3;

    private TrendAnswers() {}

    static Answer limits(LimitChart chart) {
        return signals(withLimits(Answer.of(), chart), chart.signals(), TrendAnswers::words)
                .with("points", points(chart));
    }

    static Answer times(TimeChart chart) {
        LimitChart y = chart.transformed();
        return limits(chart.times())
                .with("spread", (y.points().get(0).upper() - y.centre()) / SIGMAS)
                .with("transformed", withLimits(Answer.of(), y).figures())
                .with("transformedPoints", points(y));
    }

    static Answer sums(Cusum cusum, Cusum.Chart chart) {
        Answer answer = Answer.of()
                .with("centre", cusum.target())
                .with("k", cusum.slack())
                .with("h", cusum.interval());
        return signals(answer, chart.signals(), signal -> words(cusum, chart, signal))
                .with(
                        "points",
                        Json.array(
                                chart.points().stream().map(TrendAnswers::sums).toList()));
    }

    private static Answer withLimits(Answer answer, LimitChart chart) {
        Answer centred = answer.with("centre", chart.centre());
        Point first = chart.points().get(0);
        boolean same = chart.points().stream()
                .allMatch(point -> point.lower() == first.lower() && point.upper() == first.upper());
        return same ? centred.with("lower", first.lower()).with("upper", first.upper()) : centred;
    }

    private static Answer signals(Answer answer, List<Signal> signals, Function<Signal, String> words) {
        Answer all = answer.with(
                "signals",
                Json.array(signals.stream()
                        .map(signal -> signal(signal, words.apply(signal)))
                        .toList()));
        return signals.isEmpty()
                ? all.inWords("trend.no-signal").minding("trend.meaning")
                : all.inWords("trend.signals", signals.size()).minding("trend.meaning");
    }

    private static Json.Obj signal(Signal signal, String words) {
        return Json.object()
                .with("kind", signal.kind().code())
                .with("point", signal.point() == 0 ? Json.Null.NULL : Answer.number(signal.point()))
                .with("measured", Answer.number(signal.measured()))
                .with("limit", Answer.number(signal.limit()))
                .with("text", words);
    }

    private static String words(Signal signal) {
        return SumWords.get(
                "signal." + signal.kind().code(),
                signal.point(),
                Answer.forPeople(signal.measured()),
                Answer.forPeople(signal.limit()));
    }

    private static String words(Cusum cusum, Cusum.Chart chart, Signal signal) {
        Cusum.Sums at = chart.points().get(signal.point() - 1);
        int run = signal.kind() == Signal.Kind.SUM_HIGH ? at.highRun() : at.lowRun();
        return SumWords.get(
                "signal." + signal.kind().code(),
                signal.point(),
                Answer.forPeople(signal.measured()),
                Answer.forPeople(signal.limit()),
                signal.point() - run + 1,
                Answer.forPeople(cusum.estimate(at)));
    }

    private static Json points(LimitChart chart) {
        return Json.array(chart.points().stream().map(TrendAnswers::point).toList());
    }

    private static Json.Obj point(Point point) {
        return Json.object()
                .with("number", point.number())
                .with("value", Answer.number(point.value()))
                .with("lower", Answer.number(point.lower()))
                .with("upper", Answer.number(point.upper()))
                .with("counted", point.counted());
    }

    private static Json.Obj sums(Cusum.Sums sums) {
        return Json.object()
                .with("number", sums.number())
                .with("value", Answer.number(sums.value()))
                .with("high", Answer.number(sums.high()))
                .with("highRun", sums.highRun())
                .with("low", Answer.number(sums.low()))
                .with("lowRun", sums.lowRun())
                .with("cusum", Answer.number(sums.plain()));
    }
}
