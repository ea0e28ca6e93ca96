package wickbench.ledger.trend;

import java.util.List;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;
import wickbench.figures.sums.Answer;
import wickbench.figures.trend.Signal;
import wickbench.ledger.trend.Trending.Kind;

/**
 * What a chart of a trend signals, and whether it is good news.
 *
 * @param text in words
 * @param point counted from 1; empty where the signal is of the whole series
 */
public record TrendSignal(String text, Optional<Integer> point, News news) {

    /** What a signal says of the events that are counted. */
    public enum News implements Coded {
        /** More of them, or sooner one after the other. */
        MORE,
        /** Fewer of them, or longer without one: good, as long as as much is tested. */
        FEWER,
        /** Something has changed, to which side the points must tell. */
        CHANGED
    }

    static List<TrendSignal> of(Answer answer, Kind kind) {
        return answer.figures().get("signals").stream()
                .filter(Json.Arr.class::isInstance)
                .flatMap(signals -> ((Json.Arr) signals).items().stream())
                .map(signal -> signal((Json.Obj) signal, kind))
                .toList();
    }

    private static TrendSignal signal(Json.Obj signal, Kind kind) {
        return new TrendSignal(
                text(signal, "text"),
                signal.get("point")
                        .filter(Json.Num.class::isInstance)
                        .map(point -> ((Json.Num) point).value().intValueExact()),
                news(Coded.of(Signal.Kind.class, text(signal, "kind")), kind));
    }

    private static String text(Json.Obj of, String name) {
        return of.get(name)
                .filter(Json.Text.class::isInstance)
                .map(text -> ((Json.Text) text).value())
                .orElseThrow(() -> new IllegalStateException("the trend sum names no " + name + " of a signal"));
    }

    /** A point of a chart by events is what lies between two of them: high up there, they are rare. */
    private static News news(Signal.Kind signal, Kind chart) {
        return switch (signal) {
            case ABOVE_LIMIT -> chart.byWeek() ? News.MORE : News.FEWER;
            case BELOW_LIMIT -> chart.byWeek() ? News.FEWER : News.MORE;
            case NO_GAPS, SUM_HIGH -> News.MORE;
            case SUM_LOW -> News.FEWER;
            case LONG_RUN, FEW_CROSSINGS -> News.CHANGED;
        };
    }
}
