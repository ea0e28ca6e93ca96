package wickbench.training.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.training.Call;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.ReaderScore;
import wickbench.training.Round;
import wickbench.training.RoundKey;
import wickbench.training.Skill;
import wickbench.training.StripClass;
import wickbench.training.Truth;
import wickbench.training.book.TrainingWords;
import wickbench.training.round.Odds;

/** The plots of a round. */
final class RoundCharts {
    /** So that the marks of several readers on one strip are all seen. */
    private static final double APART = 0.12;

    private RoundCharts() {}

    /** What everybody called of each strip, in the order of the key's kinds. */
    static Chart calls(Round round, RoundKey key, Map<String, Truth> truth) {
        List<RoundKey.Sealed> strips = inOrder(key);
        List<Series> series = new ArrayList<>();
        List<PersonId> callers = round.plan().callers();
        for (int i = 0; i < callers.size(); i++) {
            series.add(calls(round, callers.get(i), strips, shift(i, callers.size())));
        }
        series.add(wrong(round, strips, truth));
        return new Chart(
                TrainingWords.get("chart.calls"),
                new Axis(
                        TrainingWords.get("column.code"),
                        "",
                        new Axis.Named(strips.stream().map(RoundCharts::named).toList())),
                new Axis(
                        TrainingWords.get("chart.called"),
                        "",
                        new Axis.Named(java.util.Arrays.stream(Outcome.values())
                                .map(outcome -> TrainingWords.get("outcome." + outcome.code()))
                                .toList())),
                series,
                List.of());
    }

    /** Blanks first, invalid ones last. */
    static List<RoundKey.Sealed> inOrder(RoundKey key) {
        return key.strips().stream()
                .sorted(java.util.Comparator.comparing((RoundKey.Sealed strip) -> strip.kind())
                        .thenComparing(RoundKey.Sealed::code))
                .toList();
    }

    private static String named(RoundKey.Sealed strip) {
        return strip.code() + " " + TrainingWords.get("class." + strip.kind().code());
    }

    private static double shift(int caller, int callers) {
        return (caller - (callers - 1) / 2.0) * APART;
    }

    /** Wrong calls once more, with a mark of their own. */
    private static Series wrong(Round round, List<RoundKey.Sealed> strips, Map<String, Truth> truth) {
        List<double[]> points = new ArrayList<>();
        List<PersonId> callers = round.plan().callers();
        for (int x = 0; x < strips.size(); x++) {
            String code = strips.get(x).code();
            for (int i = 0; i < callers.size(); i++) {
                int place = x;
                double shift = shift(i, callers.size());
                round.callsOf(callers.get(i)).stream()
                        .filter(call -> call.code().equals(code) && truth.containsKey(code))
                        .filter(call -> !truth.get(code).right(call.outcome()))
                        .forEach(call ->
                                points.add(new double[] {place, call.outcome().ordinal() + shift}));
            }
        }
        return new Series(
                TrainingWords.get("chart.wrong"),
                Series.Mark.POINTS,
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray());
    }

    private static Series calls(Round round, PersonId person, List<RoundKey.Sealed> strips, double shift) {
        List<Call> calls = round.callsOf(person);
        double[] x = IntStream.range(0, strips.size()).asDoubleStream().toArray();
        double[] y = strips.stream()
                .mapToDouble(strip -> calls.stream()
                        .filter(call -> call.code().equals(strip.code()))
                        .mapToDouble(call -> call.outcome().ordinal() + shift)
                        .findFirst()
                        .orElse(Double.NaN))
                .toArray();
        return new Series(person.value(), Series.Mark.POINTS, x, y);
    }

    /** The share of near-limit strips that each reader called right, between its exact limits. */
    static Chart shares(Round round) {
        List<ReaderScore> scores = round.scores();
        return new Chart(
                TrainingWords.get("chart.shares"),
                new Axis(
                        TrainingWords.get("column.reader"),
                        "",
                        new Axis.Named(scores.stream()
                                .map(score -> score.reader().value())
                                .toList())),
                Axis.linear(TrainingWords.get("chart.right"), "%"),
                List.of(
                        share("chart.upper", scores, tally -> tally.share().upper()),
                        share("chart.share", scores, tally -> tally.share().estimate()),
                        share("chart.lower", scores, tally -> tally.share().lower())),
                List.of());
    }

    private static Series share(
            String name, List<ReaderScore> scores, java.util.function.ToDoubleFunction<ReaderScore.Tally> of) {
        return new Series(
                TrainingWords.get(name),
                Series.Mark.POINTS,
                IntStream.range(0, scores.size()).asDoubleStream().toArray(),
                scores.stream()
                        .mapToDouble(score -> score.of(ReaderScore.Topic.NEAR)
                                .or(() -> score.of(ReaderScore.Topic.CLEAR))
                                .map(tally -> 100 * of.applyAsDouble(tally))
                                .orElse(Double.NaN))
                        .toArray());
    }

    /** The chance to pass against the chance of seeing a faint line. */
    static Chart odds(Design design) {
        Operating operating = Odds.of(design, Skill.POOR, Skill.GOOD);
        return new Chart(
                TrainingWords.get("chart.odds", design.of(StripClass.NEAR_LIMIT)),
                Axis.linear(TrainingWords.get("chart.near"), "%"),
                Axis.linear(TrainingWords.get("chart.passes"), "%"),
                List.of(new Series(
                        TrainingWords.get("chart.passes"),
                        Series.Mark.LINE,
                        operating.curve().stream()
                                .mapToDouble(point -> 100 * point.near())
                                .toArray(),
                        operating.curve().stream()
                                .mapToDouble(point -> 100 * point.passes())
                                .toArray())),
                List.of());
    }
}
