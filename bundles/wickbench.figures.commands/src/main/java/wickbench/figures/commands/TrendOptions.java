package wickbench.figures.commands;

import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import wickbench.figures.trend.Basis;

/** What a chart may be told, named as in the handbooks; a chart takes the ones it has. */
final class TrendOptions {
    @Option(names = "--without", split = ",", paramLabel = "POINT")
    Set<Integer> without = Set.of();

    @Option(names = "--centre", paramLabel = "X")
    Optional<Double> centre = Optional.empty();

    @Option(names = "--target", paramLabel = "X")
    Optional<Double> target = Optional.empty();

    @Option(names = "--sigma", paramLabel = "S")
    Optional<Double> sigma = Optional.empty();

    @Option(names = "--k", paramLabel = "K")
    Optional<Double> slack = Optional.empty();

    @Option(names = "--h", paramLabel = "H")
    Optional<Double> interval = Optional.empty();

    @Option(names = "--lambda", paramLabel = "W")
    double weight = 0.2;

    @Option(
            names = {"--L", "--width"},
            paramLabel = "L")
    double width = 3;

    @Option(names = "--starting-limits")
    boolean starting;

    @Option(names = "--minimum", paramLabel = "A")
    long minimum;

    Basis basis() {
        return centre.<Basis>map(Basis.Known::new).orElseGet(() -> new Basis.Points(without));
    }
}
