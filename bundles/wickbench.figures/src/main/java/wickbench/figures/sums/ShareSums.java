package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.figures.Limits;
import wickbench.figures.agreement.McNemar;
import wickbench.figures.proportion.Differences;
import wickbench.figures.proportion.Interval;
import wickbench.figures.proportion.Laboratories;
import wickbench.figures.proportion.LaboratoryStudy;

/** How sure a share is, and whether two differ. */
final class ShareSums {
    private static final List<String> INTERVALS =
            Arrays.stream(Interval.values()).map(Interval::code).toList();

    private ShareSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "proportion",
                        Topic.SHARES,
                        List.of(
                                Input.whole("X").at("X").like("29"),
                                Input.whole("N").at("N").like("30"),
                                Input.choice("interval", INTERVALS).usual(Interval.WILSON.code()),
                                Input.level()),
                        ShareSums::proportion),
                Sum.of(
                        "pod",
                        Topic.SHARES,
                        List.of(
                                Input.table("study", "level", "tests", "positives")
                                        .like(DetectionSums.STUDY),
                                Input.level()),
                        ShareSums::detected),
                Sum.of(
                        "difference",
                        Topic.SHARES,
                        List.of(
                                Input.whole("X1").at("X1").like("20"),
                                Input.whole("N1").at("N1").like("20"),
                                Input.whole("X2").at("X2").like("17"),
                                Input.whole("N2").at("N2").like("20"),
                                Input.level()),
                        ShareSums::difference),
                Sum.of(
                        "paired",
                        Topic.SHARES,
                        List.of(
                                Input.whole("A").at("A").like("41"),
                                Input.whole("B").at("B").like("9"),
                                Input.whole("C").at("C").like("2"),
                                Input.whole("D").at("D").like("48"),
                                Input.level()),
                        ShareSums::paired),
                Sum.of(
                        "laboratories",
                        Topic.SHARES,
                        List.of(
                                Input.table("laboratories", "positives", "tests")
                                        .like(
                                                "positives,tests\n7,12\n9,12\n6,12\n10,12\n5,12\n7,12\n5,12\n7,12\n11,12\n9,12"),
                                Input.level()),
                        ShareSums::laboratories));
    }

    private static Answer proportion(Given given) {
        long x = given.count("X");
        long n = given.count("N");
        double level = given.number("level");
        Interval interval = given.coded("interval", Interval.values(), Interval::code);
        Limits limits = interval.of(x, n, level);
        return Answer.of(limits)
                .inWords(
                        "proportion.result",
                        x,
                        n,
                        Answer.percent(limits.estimate()),
                        Answer.percent(limits.lower()),
                        Answer.percent(limits.upper()),
                        Answer.percent(level))
                .by("proportion." + interval.code())
                .plotted(() -> Plots.limits(
                        "share",
                        INTERVALS,
                        Arrays.stream(Interval.values())
                                .map(each -> each.of(x, n, level))
                                .toList()));
    }

    /** Every level by itself, with the guidelines' limits at 0 of N and N of N. */
    private static Answer detected(Given given) {
        Table study = given.table("study", "level", "tests", "positives");
        double level = given.number("level");
        double[] doses = study.numbers(0);
        long[] tests = study.counts(1, "tests");
        long[] positives = study.counts(2, "positives");
        List<Limits> pods = study.told(() -> IntStream.range(0, doses.length)
                .mapToObj(i -> DetectionSums.pod(positives[i], tests[i], level, i))
                .toList());
        return Answer.of()
                .with(
                        "levels",
                        Json.array(IntStream.range(0, doses.length)
                                .mapToObj(i -> DetectionSums.row(doses[i], tests[i], positives[i], pods.get(i)))
                                .toList()))
                .inWords("pod.result", doses.length)
                .by("pod.formula")
                .plotted(() -> Plots.limits(
                        "pod", Arrays.stream(doses).mapToObj(TableText::plain).toList(), pods));
    }

    private static Answer difference(Given given) {
        double level = given.number("level");
        Limits limits =
                Differences.unpaired(given.count("X1"), given.count("N1"), given.count("X2"), given.count("N2"), level);
        return difference(limits, level)
                .by("difference.hybrid")
                .plotted(() -> Plots.limits(
                        "share",
                        List.of(Plots.word("first"), Plots.word("second"), Plots.word("difference")),
                        List.of(
                                Interval.WILSON.of(given.count("X1"), given.count("N1"), level),
                                Interval.WILSON.of(given.count("X2"), given.count("N2"), level),
                                limits)));
    }

    private static Answer difference(Limits limits, double level) {
        boolean told = limits.lower() > 0 || limits.upper() < 0;
        return Answer.of()
                .with("difference", limits.estimate())
                .with("lower", limits.lower())
                .with("upper", limits.upper())
                .inWords(
                        told ? "difference.told" : "difference.not-told",
                        Answer.forPeople(limits.estimate()),
                        Answer.forPeople(limits.lower()),
                        Answer.forPeople(limits.upper()),
                        Answer.percent(level));
    }

    private static Answer paired(Given given) {
        long both = given.count("A");
        long first = given.count("B");
        long second = given.count("C");
        long neither = given.count("D");
        double level = given.number("level");
        Limits limits = Differences.paired(both, first, second, neither, level);
        long n = both + first + second + neither;
        Answer answer = difference(limits, level)
                .by("paired.hybrid")
                .plotted(() -> Plots.limits(
                        "share",
                        List.of(Plots.word("first"), Plots.word("second"), Plots.word("difference")),
                        List.of(
                                Interval.WILSON.of(both + first, n, level),
                                Interval.WILSON.of(both + second, n, level),
                                limits)));
        return first + second == 0
                ? answer.with("mcnemar", Json.Null.NULL).minding("paired.none-differ")
                : tested(answer, McNemar.of(first, second));
    }

    private static Answer tested(Answer answer, McNemar test) {
        return answer.with(
                        "mcnemar",
                        Json.object()
                                .with("plain", chi2(test.plain(), test.plainP()))
                                .with("corrected", chi2(test.corrected(), test.correctedP()))
                                .with("exact", Json.object().with("p", Answer.number(test.exactP()))))
                .by("paired.mcnemar");
    }

    private static Json.Obj chi2(double statistic, double p) {
        return Json.object().with("chi2", Answer.number(statistic)).with("p", Answer.number(p));
    }

    private static Answer laboratories(Given given) {
        Table table = given.table("laboratories", "positives", "tests");
        long[] positives = table.counts(0, "positives");
        long[] tests = table.counts(1, "tests");
        Laboratories study = LaboratoryStudy.of(positives, tests, given.number("level"));
        return Answer.of()
                .withLimits("lpod", study.lpod())
                .with("repeatability", variance(study.repeatability()))
                .with("laboratory", variance(study.betweenLaboratories()))
                .with("reproducibility", variance(study.reproducibility()))
                .with("podVariance", study.podVariance())
                .with(
                        "homogeneity",
                        study.homogeneity().<Json>map(ShareSums::test).orElse(Json.Null.NULL))
                .inWords(
                        "laboratories.result",
                        positives.length,
                        Answer.forPeople(study.lpod().estimate()),
                        Answer.forPeople(study.lpod().lower()),
                        Answer.forPeople(study.lpod().upper()))
                .by(study.byLaboratories() ? "laboratories.student" : "laboratories.pooled")
                .by("laboratories.variances")
                .plotted(() -> plot(positives, tests, study));
    }

    private static Chart plot(long[] positives, long[] tests, Laboratories study) {
        double[] shares = IntStream.range(0, tests.length)
                .mapToDouble(i -> (double) positives[i] / tests[i])
                .toArray();
        return Plots.with(
                Plots.chart(
                        Plots.axis("laboratory"),
                        Plots.axis("pod"),
                        Plots.series("laboratory", Series.Mark.POINTS, Plots.counted(shares.length, 1), shares)),
                Plots.limit("lpod", study.lpod().estimate()),
                Plots.limit("lower", study.lpod().lower()),
                Plots.limit("upper", study.lpod().upper()));
    }

    private static Json variance(double variance) {
        return Json.object().with("variance", Answer.number(variance)).with("sd", Answer.number(Math.sqrt(variance)));
    }

    private static Json test(Laboratories.Homogeneity test) {
        return Json.object()
                .with("chi2", Answer.number(test.chiSquared()))
                .with("df", test.df())
                .with("p", Answer.number(test.p()));
    }
}
