package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.NoAnswer;
import wickbench.figures.trend.CountChart;
import wickbench.figures.trend.Cusum;
import wickbench.figures.trend.Ewma;
import wickbench.figures.trend.GapChart;
import wickbench.figures.trend.Group;
import wickbench.figures.trend.ProportionChart;
import wickbench.figures.trend.TimeChart;

/** {@code figures trend}: a chart of a series, and what it signals. */
@Command(name = "trend")
final class TrendCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--chart", required = true, paramLabel = "CHART", converter = TrendKind.Named.class)
    private TrendKind chart;

    @Mixin
    private TrendOptions options = new TrendOptions();

    @Override
    public Integer call() {
        Table table = table();
        return figures.answer(table, () -> answer(table));
    }

    private Table table() {
        return switch (chart) {
            case P, P_PRIME -> TableFile.read(file, "count", "size");
            case C -> TableFile.read(file, "count");
            case CUSUM, EWMA -> TableFile.read(file, "value");
            case G, T -> TableFile.read(file, "gap");
        };
    }

    private Answer answer(Table table) {
        return switch (chart) {
            case P ->
                TrendAnswers.limits(ProportionChart.plain(groups(table), options.basis())
                                .chart())
                        .saying("trend.p");
            case P_PRIME -> overdispersed(table);
            case C ->
                TrendAnswers.limits(CountChart.of(counts(table, "count"), options.basis())
                                .chart())
                        .saying("trend.c");
            case CUSUM -> cusum(table);
            case EWMA -> ewma(table);
            case G -> gaps(table);
            case T -> TrendAnswers.times(TimeChart.of(values(table))).saying("trend.t");
        };
    }

    private Answer overdispersed(Table table) {
        ProportionChart wide = ProportionChart.overdispersed(groups(table), options.basis());
        return TrendAnswers.limits(wide.chart()).with("sigmaZ", wide.spread()).saying("trend.p-prime");
    }

    private Answer cusum(Table table) {
        double target = options.target.orElseThrow(() -> NoAnswer.of("--target", "trend.needs-target"));
        if (options.sigma.isEmpty() && (options.slack.isEmpty() || options.interval.isEmpty())) {
            throw NoAnswer.of("--sigma", "trend.needs-sigma");
        }
        double sigma = options.sigma.orElse(1.0);
        Cusum cusum = Cusum.inSigmas(target, sigma, options.slack.orElse(0.5), options.interval.orElse(5.0));
        return TrendAnswers.sums(cusum, cusum.of(values(table))).saying("trend.cusum");
    }

    private Answer ewma(Table table) {
        double target = options.target.orElseThrow(() -> NoAnswer.of("--target", "trend.needs-target"));
        double sigma = options.sigma.orElseThrow(() -> NoAnswer.of("--sigma", "trend.needs-sigma-ewma"));
        Ewma ewma = new Ewma(target, sigma, options.weight, options.width);
        List<Double> values = values(table);
        return TrendAnswers.limits(options.starting ? ewma.withStartingLimits(values) : ewma.of(values))
                .saying("trend.ewma");
    }

    private Answer gaps(Table table) {
        GapChart gaps = GapChart.of(counts(table, "gap"), options.minimum);
        return TrendAnswers.limits(gaps.chart())
                .with("likelyLower", gaps.likely().lower())
                .with("likelyMiddle", gaps.likely().middle())
                .with("likelyUpper", gaps.likely().upper())
                .saying("trend.g")
                .saying("trend.g-blind");
    }

    private static List<Group> groups(Table table) {
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

    private static List<Long> counts(Table table, String name) {
        return Arrays.stream(table.counts(0, name)).boxed().toList();
    }

    private static List<Double> values(Table table) {
        return Arrays.stream(table.numbers(0)).boxed().toList();
    }
}
