package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wickbench.figures.NoAnswer;
import wickbench.figures.trend.Basis;
import wickbench.figures.trend.CountChart;
import wickbench.figures.trend.Cusum;
import wickbench.figures.trend.Ewma;
import wickbench.figures.trend.GapChart;
import wickbench.figures.trend.Group;
import wickbench.figures.trend.LimitChart;
import wickbench.figures.trend.ProportionChart;
import wickbench.figures.trend.TimeChart;

/** Whether something has changed. */
final class TrendSums {
    private static final String CHART = "chart";

    private TrendSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "trend",
                        Topic.TREND,
                        List.of(
                                Input.choice(CHART, TrendKind.codes()).like("p"),
                                Input.table("groups", "count", "size")
                                        .like(groups(
                                                12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11,
                                                20, 18, 24, 15, 9, 12, 7, 13, 9, 6))
                                        .only(CHART, "p", "p-prime"),
                                Input.table("counts", "count")
                                        .like(
                                                column(
                                                        "count",
                                                        "16 14 28 16 12 20 10 12 10 17 19 17 14 16 15 13 14 16 11 20 11 19 16 31 13"))
                                        .only(CHART, "c"),
                                Input.table("values", "value")
                                        .like(column(
                                                "value",
                                                "324.925 324.675 324.725 324.350 325.350 325.225 324.125 324.525 325.225 324.600"
                                                        + " 324.625 325.150 328.325 327.250 327.825 328.500 326.675 327.775"
                                                        + " 326.875 328.350"))
                                        .only(CHART, "cusum", "ewma"),
                                Input.table("gaps", "gap")
                                        .like(column("gap", "5 7 2 11 0 3 8 4 1 16 6 9 2 5 3"))
                                        .only(CHART, "g", "t"),
                                Input.numbers("without").optional().only(CHART, "p", "p-prime", "c"),
                                Input.number("centre").optional().only(CHART, "p", "p-prime", "c", "g", "t"),
                                Input.number("spread").optional().only(CHART, "p-prime", "t"),
                                Input.number("target").like("325").only(CHART, "cusum", "ewma"),
                                Input.number("sigma").optional().like("1.2").only(CHART, "cusum", "ewma"),
                                Input.number("k").optional().only(CHART, "cusum"),
                                Input.number("h").optional().only(CHART, "cusum"),
                                Input.number("lambda").usual("0.2").only(CHART, "ewma"),
                                Input.number("L").usual("3").only(CHART, "ewma"),
                                Input.flag("starting-limits").only(CHART, "ewma"),
                                Input.whole("minimum").usual("0").only(CHART, "g")),
                        TrendSums::trend),
                RunLengthSum.sum());
    }

    private static String groups(int... counts) {
        return "count,size\n"
                + Arrays.stream(counts).mapToObj(count -> count + ",50").collect(Collectors.joining("\n"));
    }

    private static String column(String name, String values) {
        return name + "\n" + values.replace(' ', '\n');
    }

    private static Answer trend(Given given) {
        return switch (given.coded(CHART, TrendKind.values(), TrendKind::code)) {
            case P -> plain(given);
            case P_PRIME -> overdispersed(given);
            case C -> {
                Table counts = given.table("counts", "count");
                yield limits(CountChart.of(whole(counts, "count"), basis(given)).chart(), "count")
                        .by("trend.c");
            }
            case CUSUM -> cusum(given);
            case EWMA -> ewma(given);
            case G -> gaps(given);
            case T -> times(given);
        };
    }

    private static Answer limits(LimitChart chart, String y) {
        return TrendAnswers.limits(chart).plotted(() -> TrendPlots.limits(chart, y));
    }

    private static Answer plain(Given given) {
        return limits(ProportionChart.plain(groups(given), basis(given)).chart(), "share")
                .by("trend.p");
    }

    private static Answer overdispersed(Given given) {
        ProportionChart wide = given.has("spread")
                ? ProportionChart.overdispersed(groups(given), known(given), given.number("spread"))
                : ProportionChart.overdispersed(groups(given), basis(given));
        return limits(wide.chart(), "share").with("sigmaZ", wide.spread()).by("trend.p-prime");
    }

    private static Answer cusum(Given given) {
        if (!given.has("sigma") && !(given.has("k") && given.has("h"))) {
            throw NoAnswer.of("sigma", "trend.needs-sigma");
        }
        Cusum cusum = Cusum.inSigmas(
                given.number("target"),
                given.optional("sigma").orElse(1.0),
                given.optional("k").orElse(0.5),
                given.optional("h").orElse(5.0));
        Cusum.Chart chart = cusum.of(values(given.table("values", "value")));
        return TrendAnswers.sums(cusum, chart).by("trend.cusum").plotted(() -> TrendPlots.sums(cusum, chart));
    }

    private static Answer ewma(Given given) {
        if (!given.has("sigma")) {
            throw NoAnswer.of("sigma", "trend.needs-sigma-ewma");
        }
        Ewma ewma = new Ewma(given.number("target"), given.number("sigma"), given.number("lambda"), given.number("L"));
        List<Double> values = values(given.table("values", "value"));
        return limits(given.flag("starting-limits") ? ewma.withStartingLimits(values) : ewma.of(values), "average")
                .by("trend.ewma");
    }

    private static Answer gaps(Given given) {
        GapChart gaps = GapChart.of(whole(given.table("gaps", "gap"), "gap"), given.count("minimum"), centre(given));
        return limits(gaps.chart(), "gap")
                .with("likelyLower", gaps.likely().lower())
                .with("likelyMiddle", gaps.likely().middle())
                .with("likelyUpper", gaps.likely().upper())
                .by("trend.g")
                .minding("trend.g-blind");
    }

    private static Answer times(Given given) {
        List<Double> times = values(given.table("gaps", "gap"));
        TimeChart chart = given.has("spread") || given.has("centre")
                ? TimeChart.of(times, known(given).centre(), needed(given, "spread"))
                : TimeChart.of(times);
        return TrendAnswers.times(chart).by("trend.t").plotted(() -> TrendPlots.limits(chart.times(), "gap"));
    }

    /** A spread without a centre, or a centre without a spread, is of no period. */
    private static Basis.Known known(Given given) {
        return new Basis.Known(needed(given, "centre"));
    }

    private static OptionalDouble centre(Given given) {
        return given.optional("centre").map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    private static double needed(Given given, String name) {
        return given.optional(name).orElseThrow(() -> NoAnswer.of(name, "trend.needs-both"));
    }

    private static Basis basis(Given given) {
        return given.has("centre") ? new Basis.Known(given.number("centre")) : new Basis.Points(setAside(given));
    }

    private static Set<Integer> setAside(Given given) {
        double[] numbers = given.has("without") ? given.numbers("without") : new double[0];
        for (double number : numbers) {
            if (number != (int) number) {
                throw Wrong.of("without", "table.not-a-count", TableText.plain(number));
            }
        }
        return Arrays.stream(numbers).mapToObj(number -> (int) number).collect(Collectors.toSet());
    }

    private static List<Group> groups(Given given) {
        Table table = given.table("groups", "count", "size");
        long[] counts = table.counts(0, "count");
        long[] sizes = table.counts(1, "size");
        return IntStream.range(0, counts.length)
                .mapToObj(i -> group(i, counts[i], sizes[i]))
                .toList();
    }

    private static Group group(int row, long count, long size) {
        try {
            return new Group(count, size);
        } catch (NoAnswer none) {
            throw none.inRow(row);
        }
    }

    private static List<Long> whole(Table table, String name) {
        return Arrays.stream(table.counts(0, name)).boxed().toList();
    }

    private static List<Double> values(Table table) {
        return Arrays.stream(table.numbers(0)).boxed().toList();
    }
}
