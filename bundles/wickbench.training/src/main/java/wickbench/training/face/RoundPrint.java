package wickbench.training.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.words.Decimals;
import wickbench.training.Agreement;
import wickbench.training.Compared;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PassRule;
import wickbench.training.ReaderScore;
import wickbench.training.Round;
import wickbench.training.StripClass;
import wickbench.training.book.TrainingWords;

/** Rounds in words; reports and commands say the same. */
final class RoundPrint {
    private RoundPrint() {}

    static String design(Design design) {
        return java.util.Arrays.stream(StripClass.values())
                .filter(kind -> design.of(kind) > 0)
                .map(kind -> design.of(kind) + " " + TrainingWords.get("class." + kind.code()))
                .collect(Collectors.joining(", "));
    }

    static String rule(PassRule rule) {
        return TrainingWords.get(
                "rule",
                rule.nearMissed(),
                rule.clearMissed(),
                rule.falseAlarms(),
                rule.invalidMissed(),
                rule.outsideWindow());
    }

    static List<String> operating(Operating operating) {
        List<String> lines = new ArrayList<>();
        lines.add(design(operating.design()));
        lines.add(rule(operating.design().rule()));
        lines.add(TrainingWords.get("odds.poor", percent(operating.poor().near()), percent(operating.poorPasses())));
        lines.add(TrainingWords.get("odds.good", percent(operating.good().near()), percent(operating.goodFails())));
        lines.add(TrainingWords.get("odds.skills"));
        return lines;
    }

    static String percent(double share) {
        return Decimals.of(100 * share, 1) + " %";
    }

    static String number(Optional<Double> value) {
        return value.map(each -> Decimals.of(each, 3)).orElse("–");
    }

    static List<String> scoreHeader() {
        return Print.columns("reader", "result", "near", "clear", "without", "invalid", "window", "kappa", "ac1", "d");
    }

    static List<String> scoreRow(ReaderScore score) {
        return List.of(
                score.reader().value(),
                result(score),
                tally(score, ReaderScore.Topic.NEAR),
                tally(score, ReaderScore.Topic.CLEAR),
                tally(score, ReaderScore.Topic.WITHOUT),
                tally(score, ReaderScore.Topic.INVALID),
                score.inside() + "/" + score.called(),
                number(score.kappa()),
                number(score.ac1()),
                number(score.dPrime()));
    }

    static String result(ReaderScore score) {
        return score.passed()
                ? TrainingWords.get("score.passed")
                : TrainingWords.get(
                        "score.failed",
                        score.failures().stream()
                                .map(failure -> TrainingWords.get(
                                        "failure." + failure.topic().code(), failure.wrong(), failure.allowed()))
                                .collect(Collectors.joining(", ")));
    }

    private static String tally(ReaderScore score, ReaderScore.Topic topic) {
        return score.of(topic)
                .map(tally -> String.format(
                        Locale.ROOT,
                        "%d/%d (%.0f–%.0f %%)",
                        tally.right(),
                        tally.of(),
                        100 * tally.share().lower(),
                        100 * tally.share().upper()))
                .orElse("–");
    }

    static List<String> agreement(Agreement agreement) {
        List<String> lines = new ArrayList<>();
        lines.add(TrainingWords.get(
                "agreement", agreement.readers().size(), number(agreement.kappa()), number(agreement.ac1())));
        if (!agreement.disputed().isEmpty()) {
            lines.add(TrainingWords.get("agreement.disputed", String.join(", ", agreement.disputed())));
        }
        return lines;
    }

    static List<String> head(Round round) {
        List<String> lines = new ArrayList<>();
        lines.add(TrainingWords.get(
                "round.head",
                round.id(),
                TrainingWords.get("round-state." + round.state().code()),
                round.plan().method(),
                design(round.plan().design())));
        lines.add(rule(round.plan().design().rule()));
        lines.add(TrainingWords.get("round.commitment", round.commitment()));
        round.keyHolds()
                .ifPresent(holds -> lines.add(TrainingWords.get(holds ? "round.key-holds" : "round.key-broken")));
        return lines;
    }

    static String compared(Compared compared) {
        return TrainingWords.get(
                        "compared",
                        compared.reader(),
                        compared.first(),
                        compared.second(),
                        compared.shared(),
                        compared.firstOnly(),
                        compared.secondOnly())
                + compared.test()
                        .map(test -> " "
                                + TrainingWords.get("compared.p", Decimals.of(test.exactP(), 4)))
                        .orElse("");
    }
}
