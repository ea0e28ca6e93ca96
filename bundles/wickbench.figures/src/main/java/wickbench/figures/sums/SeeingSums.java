package wickbench.figures.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.figures.distribution.Normal;
import wickbench.figures.sampling.ReaderRound;
import wickbench.figures.seeing.Psychometric;
import wickbench.figures.seeing.PsychometricFit;
import wickbench.figures.seeing.Sensitivity;
import wickbench.figures.seeing.Staircase;

/** How well a reader sees a line. */
final class SeeingSums {
    private SeeingSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "seeing",
                        Topic.SEEING,
                        List.of(
                                Input.whole("HITS").at("HITS").like("20"),
                                Input.whole("SIGNALS").at("SIGNALS").like("25"),
                                Input.whole("ALARMS").at("ALARMS").like("10"),
                                Input.whole("NOISE").at("NOISE").like("25")),
                        SeeingSums::seeing),
                Sum.of(
                        "psychometric",
                        Topic.SEEING,
                        List.of(
                                Input.table("shown", "level", "tests", "yes")
                                        .like(
                                                "level,tests,yes\n-2,40,1\n-1.5,40,1\n-1,40,4\n-0.5,40,9\n0,40,18\n0.5,40,29\n1,40,35\n"
                                                        + "1.5,40,38\n2,40,38"),
                                Input.number("cap").usual("0.06")),
                        SeeingSums::psychometric),
                Sum.of(
                        "staircase",
                        Topic.SEEING,
                        List.of(
                                Input.words("answers").at("ANSWERS").like("YYYYNYYNYYNYNYYYYNYYNYY"),
                                Input.number("start").like("10"),
                                Input.number("step").like("1"),
                                Input.whole("down").usual("2"),
                                Input.whole("last").usual("6")),
                        SeeingSums::staircase),
                Sum.of(
                        "round",
                        Topic.SEEING,
                        List.of(
                                Input.whole("n").like("20"),
                                Input.whole("accept").like("1"),
                                Input.number("skill").like("0.95")),
                        SeeingSums::round));
    }

    private static Answer seeing(Given given) {
        long hits = given.count("HITS");
        long signals = given.count("SIGNALS");
        long alarms = given.count("ALARMS");
        long noise = given.count("NOISE");
        Sensitivity corrected = Sensitivity.corrected(hits, signals, alarms, noise);
        return Answer.of()
                .with(
                        "plain",
                        Sensitivity.of(hits, signals, alarms, noise)
                                .<Json>map(SeeingSums::members)
                                .orElse(Json.Null.NULL))
                .with("corrected", members(corrected))
                .inWords(
                        corrected.criterion() > 0 ? "seeing.slow" : "seeing.quick",
                        Answer.forPeople(corrected.dPrime()),
                        Answer.percent(corrected.area()))
                .by("seeing.formula")
                .by("seeing.corrected")
                .plotted(() -> Plots.chart(
                        Plots.axis("alarm-rate"),
                        Plots.axis("hit-rate"),
                        Plots.curve(
                                "same-skill", 0.001, 0.999, f -> Normal.below(corrected.dPrime() + Normal.quantile(f))),
                        Plots.curve("guessing", 0, 1, f -> f),
                        Plots.series(
                                "reader",
                                Series.Mark.POINTS,
                                new double[] {(alarms + 0.5) / (noise + 1)},
                                new double[] {(hits + 0.5) / (signals + 1)})));
    }

    private static Json.Obj members(Sensitivity of) {
        return Json.object()
                .with("dPrime", Answer.number(of.dPrime()))
                .with("criterion", Answer.number(of.criterion()))
                .with("beta", Answer.number(of.beta()))
                .with("area", Answer.number(of.area()));
    }

    private static Answer psychometric(Given given) {
        Table shown = given.table("shown", "level", "tests", "yes");
        double[] levels = shown.numbers(0);
        long[] tests = shown.counts(1, "tests");
        long[] yes = shown.counts(2, "yes");
        Psychometric curve = PsychometricFit.of(levels, tests, yes, given.number("cap"));
        return Answer.of()
                .with("mean", curve.mean())
                .with("spread", curve.spread())
                .with("guess", curve.guess())
                .with("lapse", curve.lapse())
                .with("minusLogLikelihood", curve.minusLogLikelihood())
                .inWords(
                        "psychometric.result",
                        Answer.estimate(curve.mean()),
                        Answer.percent(curve.guess()),
                        Answer.percent(curve.lapse()))
                .by("psychometric.formula")
                .minding("psychometric.cap")
                .plotted(() -> plot(levels, tests, yes, curve));
    }

    private static Chart plot(double[] levels, long[] tests, long[] yes, Psychometric curve) {
        int[] rows = IntStream.range(0, levels.length)
                .boxed()
                .sorted((a, b) -> Double.compare(levels[a], levels[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] x = IntStream.of(rows).mapToDouble(i -> levels[i]).toArray();
        double[] y =
                IntStream.of(rows).mapToDouble(i -> (double) yes[i] / tests[i]).toArray();
        double margin = (x[x.length - 1] - x[0]) / 10;
        return Plots.chart(
                Plots.axis("shown"),
                Plots.axis("seen"),
                Plots.curve(
                        "fitted",
                        x[0] - margin,
                        x[x.length - 1] + margin,
                        at -> curve.guess()
                                + (1 - curve.guess() - curve.lapse())
                                        * Normal.below((at - curve.mean()) / curve.spread())),
                Plots.series("observed", Series.Mark.POINTS, x, y));
    }

    private static Answer staircase(Given given) {
        String answers = given.text("answers")
                .orElse("")
                .toUpperCase(java.util.Locale.ROOT)
                .replaceAll("[\\s,;]", "");
        if (!answers.matches("[YN]{1,10000}")) {
            throw Wrong.of("answers", "staircase.answers", answers);
        }
        Staircase stair = Staircase.start(given.number("start"), given.number("step"), given.whole("down"));
        List<Double> levels = new ArrayList<>();
        for (char answer : answers.toCharArray()) {
            levels.add(stair.level());
            stair = stair.answered(answer == 'Y');
        }
        double target = Staircase.target(given.whole("down"));
        OptionalDouble mean = stair.meanOfLast(given.whole("last"));
        Answer answer = Answer.of()
                .with("next", stair.level())
                .with("mean", Answer.number(mean))
                .with("target", target)
                .with("reversals", doubles(stair.reversals()))
                .with("levels", doubles(levels))
                .inWords("staircase.result", Answer.forPeople(stair.level()), Answer.percent(target))
                .by("staircase.formula")
                .plotted(() -> Plots.chart(
                        Plots.axis("strip"),
                        Plots.axis("shown"),
                        Plots.series(
                                "levels",
                                Series.Mark.LINE_AND_POINTS,
                                Plots.counted(levels.size(), 1),
                                doubles(levels))));
        return mean.isPresent() ? answer : answer.minding("staircase.few", given.whole("last"));
    }

    private static double[] doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Answer round(Given given) {
        ReaderRound round = new ReaderRound(given.whole("n"), given.whole("accept"));
        double skill = given.number("skill");
        double passes = round.passes(skill);
        return Answer.of()
                .with("passes", passes)
                .inWords(
                        "round.result",
                        Answer.percent(skill),
                        given.whole("n"),
                        given.whole("accept"),
                        Answer.percent(passes))
                .by("round.formula")
                .plotted(() -> Plots.chart(
                        Plots.axis("skill"), Plots.axis("passes"), Plots.curve("passes", 0.5, 1, round::passes)));
    }
}
