package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.detection.Detection;
import wickbench.figures.detection.DetectionCurve;
import wickbench.figures.detection.Dose;
import wickbench.figures.detection.Levels;
import wickbench.figures.detection.Link;
import wickbench.figures.detection.RelativeLimit;
import wickbench.figures.proportion.Interval;

/** What a method still sees. */
final class DetectionSums {
    /** Invented counts at five levels and a blank. */
    static final String STUDY = "level,tests,positives\n0,5,0\n0.35,20,6\n0.7,20,10\n1.4,20,15\n3,20,19\n6,5,5";

    private static final String[] COLUMNS = {"level", "tests", "positives"};

    private DetectionSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "detection",
                        Topic.DETECTION,
                        List.of(
                                Input.table("study", COLUMNS).like(STUDY),
                                Input.choice("link", codes(Link.values(), Link::code))
                                        .usual(Link.ONE_HIT.code()),
                                Input.choice("dose", codes(Dose.values(), Dose::code))
                                        .optional(),
                                Input.table("against", COLUMNS).named().optional(),
                                Input.level()),
                        DetectionSums::detection),
                BlankSum.sum());
    }

    private static <T> List<String> codes(T[] values, java.util.function.Function<T, String> code) {
        return Arrays.stream(values).map(code).toList();
    }

    /** Score limits of one row, counted from 0. */
    static Limits pod(long positives, long tests, double level, int row) {
        try {
            return Interval.WILSON.of(positives, tests, level);
        } catch (NoAnswer none) {
            throw none.field().equals("level") ? none : none.inRow(row);
        }
    }

    static Json.Obj row(double level, long tests, long positives, Limits pod) {
        return Json.object()
                .with("level", Answer.number(level))
                .with("tests", tests)
                .with("positives", positives)
                .with("pod", Answer.number(pod.estimate()))
                .with("lower", Answer.number(pod.lower()))
                .with("upper", Answer.number(pod.upper()));
    }

    private static Answer detection(Given given) {
        Levels study = levels(given.table("study", COLUMNS));
        Link link = given.coded("link", Link.values(), Link::code);
        Dose dose = given.has("dose") ? given.coded("dose", Dose.values(), Dose::code) : link.usualDose();
        double level = given.number("level");
        DetectionCurve curve = Detection.fit(study, link, dose, level);
        Answer fitted = fitted(study, curve, level);
        return given.hasTable("against")
                ? compared(fitted, study, levels(given.table("against", COLUMNS)), curve, level)
                : fitted;
    }

    private static Levels levels(Table table) {
        return table.told(() -> new Levels(table.numbers(0), table.counts(1, "tests"), table.counts(2, "positives")));
    }

    private static Answer compared(Answer fitted, Levels study, Levels reference, DetectionCurve curve, double level) {
        RelativeLimit limit = RelativeLimit.of(study, reference, curve.link(), curve.dose(), level);
        return fitted.with(
                        "relative",
                        Answer.limits(limit.ratio())
                                .with("z", Answer.number(limit.z()))
                                .with("p", Answer.number(limit.p())))
                .inWords(
                        "detection.compared",
                        Answer.forPeople(limit.ratio().estimate()),
                        Answer.forPeople(limit.ratio().lower()),
                        Answer.forPeople(limit.ratio().upper()))
                .by("detection.relative");
    }

    private static Answer fitted(Levels study, DetectionCurve curve, double level) {
        Answer answer = Answer.of()
                .with("link", curve.link().code())
                .with("dose", curve.dose().code())
                .with("coefficients", curve.coefficients())
                .with("se", curve.se())
                .withLimits("lod50", curve.lod50())
                .withLimits("lod95", curve.lod95())
                .with("deviance", curve.deviance())
                .with("df", curve.df())
                .with("misfit", misfit(curve))
                .with(
                        "blanks",
                        Json.object().with("tests", study.blankTests()).with("positives", study.blankPositives()))
                .with("levels", levels(study, curve, level))
                .inWords(
                        "detection.result",
                        Answer.estimate(curve.lod50().estimate()),
                        Answer.estimate(curve.lod95().estimate()),
                        Answer.estimate(curve.lod95().lower()),
                        Answer.estimate(curve.lod95().upper()))
                .by("detection." + curve.link().code())
                .by("detection.limits")
                .by("detection.deviance")
                .plotted(() -> plot(study, curve, level));
        Answer minded = curve.isFlagged() ? answer.minding("detection.misfit") : answer;
        Answer blanks =
                study.blankPositives() == 0 ? minded : minded.minding("detection.blanks", study.blankPositives());
        return curve.link() == Link.ONE_HIT ? blanks.minding("detection.counted") : blanks;
    }

    private static Json misfit(DetectionCurve curve) {
        return Json.object()
                .with("test", "deviance")
                .with("p", Answer.number(curve.misfit()))
                .with("flagged", curve.isFlagged());
    }

    private static Json levels(Levels study, DetectionCurve curve, double level) {
        return Json.array(IntStream.range(0, study.levels().length)
                .mapToObj(i -> row(
                                study.levels()[i],
                                study.tests()[i],
                                study.positives()[i],
                                pod(study.positives()[i], study.tests()[i], level, i))
                        .with("fitted", study.isBlank(i) ? Json.Null.NULL : Answer.number(curve.at(study.levels()[i]))))
                .toList());
    }

    private static Chart plot(Levels study, DetectionCurve curve, double level) {
        int[] rows = IntStream.range(0, study.levels().length)
                .filter(i -> !study.isBlank(i))
                .boxed()
                .sorted((a, b) -> Double.compare(study.levels()[a], study.levels()[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] x = Arrays.stream(rows).mapToDouble(i -> study.levels()[i]).toArray();
        List<Limits> pods = Arrays.stream(rows)
                .mapToObj(i -> pod(study.positives()[i], study.tests()[i], level, i))
                .toList();
        double least = x[0];
        double most = x[x.length - 1];
        boolean ratios = least > 0;
        Series line = ratios
                ? Plots.curveOfRatios("fitted", least / 2, most * 1.5, curve::at)
                : Plots.curve("fitted", least, most, curve::at);
        Axis axis = ratios ? Plots.logarithm("level") : Plots.axis("level");
        return Plots.with(
                Plots.chart(
                        axis,
                        Plots.axis("pod"),
                        line,
                        points("observed", x, pods.stream().mapToDouble(Limits::estimate)),
                        points("lower", x, pods.stream().mapToDouble(Limits::lower)),
                        points("upper", x, pods.stream().mapToDouble(Limits::upper))),
                new Chart.Limit("95 %", 0.95),
                new Chart.Limit("50 %", 0.5));
    }

    private static Series points(String name, double[] x, DoubleStream y) {
        return Plots.series(name, Series.Mark.POINTS, x, y.toArray());
    }
}
