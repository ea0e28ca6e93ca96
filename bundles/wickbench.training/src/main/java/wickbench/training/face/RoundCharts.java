package wickbench.training.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
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
    private RoundCharts() {}

    /** Everybody against the key, a row for each, in the order of the key's kinds: right, wrong, or about a disputed strip. */
    static Chart calls(Round round, RoundKey key, Map<String, Truth> truth) {
        List<RoundKey.Sealed> strips = inOrder(key);
        return new Chart(
                TrainingWords.get("chart.calls"),
                new Axis(
                        TrainingWords.get("column.code"),
                        "",
                        new Axis.Named(strips.stream().map(RoundCharts::named).toList())),
                new Axis(
                        TrainingWords.get("column.reader"),
                        "",
                        new Axis.Named(round.plan().callers().stream()
                                .map(PersonId::value)
                                .toList())),
                Stream.of(Found.values())
                        .map(found -> calls(round, strips, truth, found))
                        .filter(series -> series.size() > 0)
                        .toList(),
                List.of());
    }

    /** What a call came to. */
    private enum Found implements Coded {
        RIGHT,
        WRONG,
        DISPUTED;

        static Found of(Call call, Map<String, Truth> truth) {
            Truth known = truth.get(call.code());
            if (known == null) {
                return DISPUTED;
            }
            return known.right(call.outcome()) ? RIGHT : WRONG;
        }
    }

    private static Series calls(Round round, List<RoundKey.Sealed> strips, Map<String, Truth> truth, Found wanted) {
        List<double[]> points = new ArrayList<>();
        List<PersonId> callers = round.plan().callers();
        for (int x = 0; x < strips.size(); x++) {
            String code = strips.get(x).code();
            for (int y = 0; y < callers.size(); y++) {
                double[] point = {x, y};
                round.callsOf(callers.get(y)).stream()
                        .filter(call -> call.code().equals(code) && Found.of(call, truth) == wanted)
                        .forEach(call -> points.add(point));
            }
        }
        return new Series(
                TrainingWords.get("chart.call." + wanted.code()),
                Series.Mark.POINTS,
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray());
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
