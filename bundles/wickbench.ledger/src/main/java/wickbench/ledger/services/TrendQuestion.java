package wickbench.ledger.services;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wickbench.api.json.Json;
import wickbench.figures.sums.Given;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sums;
import wickbench.figures.sums.TableText;
import wickbench.ledger.services.TrendCounts.Between;
import wickbench.ledger.trend.Trending.Kind;
import wickbench.ledger.trend.Trending.Mark;

/**
 * Asks the sum of the trends as anybody could ask it.
 *
 * <p>Where limits are frozen, the same chart of the base period is reckoned first, and its centre and spread are what the points are
 * held against.
 */
record TrendQuestion(Kind kind) {
    private static final int PLACES = 12;

    /** What a trend is made of: weeks, or what lies between events. */
    record Material(List<Mark> weeks, List<Between> between) {}

    Reckoned ask(Material shown, Optional<Material> base) {
        return switch (kind) {
            case P, C, G -> reckon(shown, base.map(over -> frozen(over, Map.of("centre", "centre"))));
            case P_PRIME ->
                reckon(shown, base.map(over -> frozen(over, Map.of("centre", "centre", "spread", "sigmaZ"))));
            case T -> reckon(shown, base.map(over -> frozen(over, Map.of("centre", "centre", "spread", "spread"))));
            case CUSUM, EWMA -> reckon(shown, Optional.of(new Frozen(target(base.orElse(shown)), Optional.empty())));
        };
    }

    /** Centre and spread of a period, or why there are none. */
    private record Frozen(Map<String, String> texts, Optional<Reckoned> lacking) {}

    private Reckoned reckon(Material shown, Optional<Frozen> frozen) {
        Optional<Reckoned> lacking = frozen.flatMap(Frozen::lacking);
        return lacking.orElseGet(() -> sum(shown, frozen.map(Frozen::texts).orElse(Map.of())));
    }

    private Reckoned sum(Material of, Map<String, String> also) {
        Map<String, String> texts = new LinkedHashMap<>(also);
        texts.put("chart", kind.code());
        Map<String, TableText> tables = switch (kind) {
            case P, P_PRIME -> table("groups", "count,size", of.weeks(), mark -> mark.events() + "," + mark.strips());
            case C -> table("counts", "count", of.weeks(), mark -> String.valueOf(mark.events()));
            case CUSUM, EWMA ->
                table("values", "value", of.weeks(), mark -> share(mark).toPlainString());
            case G -> table("gaps", "gap", of.between(), each -> String.valueOf(each.gap()));
            case T -> table("gaps", "gap", of.between(), each -> number(each.days()));
        };
        return Sums.find("trend").orElseThrow().reckon(new Given(texts, tables));
    }

    private Frozen frozen(Material over, Map<String, String> names) {
        Reckoned base = sum(over, Map.of());
        if (!(base instanceof Reckoned.Done done)) {
            return new Frozen(Map.of(), Optional.of(base));
        }
        Map<String, String> texts = new LinkedHashMap<>();
        names.forEach((input, figure) -> texts.put(input, figure(done, figure)));
        return new Frozen(texts, Optional.empty());
    }

    private static String figure(Reckoned.Done done, String name) {
        return done.answer()
                .figures()
                .get(name)
                .filter(Json.Num.class::isInstance)
                .map(number -> ((Json.Num) number).value().toPlainString())
                .orElseThrow(() -> new IllegalStateException("the trend sum names no " + name));
    }

    private static Map<String, String> target(Material over) {
        Mark all = TrendCounts.sum(over.weeks());
        double target = share(all).doubleValue();
        double size = over.weeks().isEmpty()
                ? 1
                : (double) all.strips() / over.weeks().size();
        // of the share of a week of usual size, by the binomial law
        return Map.of("target", share(all).toPlainString(), "sigma", number(Math.sqrt(target * (1 - target) / size)));
    }

    private static BigDecimal share(Mark mark) {
        return mark.strips() == 0
                ? BigDecimal.ZERO
                : BigDecimal.valueOf(mark.events())
                        .divide(BigDecimal.valueOf(mark.strips()), PLACES, RoundingMode.HALF_UP);
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_UP).toPlainString();
    }

    private static <T> Map<String, TableText> table(String name, String header, List<T> rows, Function<T, String> row) {
        return Map.of(
                name, TableText.of(name, header + "\n" + rows.stream().map(row).collect(Collectors.joining("\n"))));
    }
}
