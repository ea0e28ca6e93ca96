package wickbench.ledger.ui.trend;

import java.util.List;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.figures.sums.Answer;

/** What a chart signals, in words, with the point that it speaks of. */
final class Signals {
    private Signals() {}

    /** @param point counted from 1; empty where the signal is of the whole series */
    record Signal(String text, Optional<Integer> point) {}

    static List<Signal> of(Answer answer) {
        return answer.figures().get("signals").stream()
                .filter(Json.Arr.class::isInstance)
                .flatMap(signals -> ((Json.Arr) signals).items().stream())
                .map(signal -> signal((Json.Obj) signal))
                .toList();
    }

    private static Signal signal(Json.Obj signal) {
        return new Signal(
                signal.get("text")
                        .filter(Json.Text.class::isInstance)
                        .map(text -> ((Json.Text) text).value())
                        .orElse(""),
                signal.get("point")
                        .filter(Json.Num.class::isInstance)
                        .map(point -> ((Json.Num) point).value().intValueExact()));
    }
}
