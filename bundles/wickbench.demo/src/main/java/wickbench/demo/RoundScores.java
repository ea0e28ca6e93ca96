package wickbench.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.figures.Limits;
import wickbench.figures.agreement.Kappa;
import wickbench.figures.agreement.TwoReaders;
import wickbench.figures.agreement.Weights;
import wickbench.figures.proportion.Interval;
import wickbench.figures.seeing.Sensitivity;

/** What a round came to, where near-limit lines overlooked are the only mistakes. */
final class RoundScores {
    private static final double LEVEL = 0.95;

    private final BlindRound round;

    RoundScores(BlindRound round) {
        this.round = round;
    }

    static boolean passed(int missed) {
        return missed <= BlindRound.NEAR_MISSED;
    }

    /** @param missed how many near-limit lines each reader overlooked */
    Json.Obj scored(Instant at, Map<PersonId, Integer> missed) {
        List<Json.Obj> scores = new ArrayList<>();
        missed.forEach((reader, count) -> scores.add(score(reader, count)));
        List<String> readers = missed.keySet().stream().map(PersonId::value).toList();
        return Json.object()
                .with("round", round.id())
                .with("at", StockEntries.time(at))
                .with("scores", Json.array(scores))
                .with(
                        "agreement",
                        Json.object().with("readers", Json.texts(readers)).with("disputed", Json.texts(List.of())));
    }

    private Json.Obj score(PersonId reader, int missed) {
        List<Json.Obj> tallies = new ArrayList<>();
        if (round.near() > 0) {
            tallies.add(tally("near", round.near() - missed, round.near()));
        }
        tallies.add(tally("clear", round.clear() + round.hook(), round.clear() + round.hook()));
        tallies.add(tally("without", round.blanks(), round.blanks()));
        tallies.add(tally("invalid", round.invalid(), round.invalid()));
        Kappa kappa = kappa(missed);
        Json.Obj score = Json.object()
                .with("reader", reader.value())
                .with("passed", passed(missed))
                .with("tallies", Json.array(tallies))
                .with("inside", round.total())
                .with("called", round.total())
                .with("kappa", number(kappa.kappa().estimate()))
                .with("ac1", number(kappa.ac1()))
                .with("failures", Json.array(failures(missed)));
        return round.near() == 0
                ? score
                : score.with(
                        "d_prime",
                        number(Sensitivity.corrected(round.near() - missed, round.near(), 0, round.blanks())
                                .dPrime()));
    }

    /** Negative, positive, invalid: rows as it is, columns as called. */
    private Kappa kappa(int missed) {
        long positives = round.near() + round.clear() + round.hook();
        return TwoReaders.of(
                        new long[][] {{round.blanks(), 0, 0}, {missed, positives - missed, 0}, {0, 0, round.invalid()}})
                .kappa(Weights.none(3), LEVEL);
    }

    private static List<Json.Obj> failures(int missed) {
        return passed(missed)
                ? List.of()
                : List.of(Json.object()
                        .with("topic", "near")
                        .with("wrong", missed)
                        .with("allowed", BlindRound.NEAR_MISSED));
    }

    private static Json.Obj tally(String topic, int right, int of) {
        Limits share = Interval.EXACT.of(right, of, LEVEL);
        return Json.object()
                .with("topic", topic)
                .with("right", right)
                .with("of", of)
                .with("lower", number(share.lower()))
                .with("upper", number(share.upper()));
    }

    private static BigDecimal number(double value) {
        return Json.Num.rounded(BigDecimal.valueOf(value));
    }
}
