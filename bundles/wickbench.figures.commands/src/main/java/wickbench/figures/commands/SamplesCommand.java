package wickbench.figures.commands;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.NoAnswer;
import wickbench.figures.sampling.NothingFound;
import wickbench.figures.sampling.SampleSize;
import wickbench.figures.sampling.ZeroFailure;

/** {@code figures samples}: how many clean samples it takes. */
@Command(name = "samples")
final class SamplesCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--prevalence", required = true, paramLabel = "P")
    private double prevalence;

    @Option(names = "--confidence", required = true, paramLabel = "C")
    private double confidence;

    @Option(names = "--sensitivity", paramLabel = "S")
    private double sensitivity = 1;

    @Option(names = "--lot", paramLabel = "N")
    private Optional<Integer> lot = Optional.empty();

    @Override
    public Integer call() {
        return figures.answer(this::answer);
    }

    private Answer answer() {
        ZeroFailure search = new ZeroFailure(prevalence, confidence, sensitivity);
        return lot.map(items -> ofLot(search, items)).orElseGet(() -> ofAnyLot(search));
    }

    private Answer ofAnyLot(ZeroFailure search) {
        int n = search.anyLot().n();
        return of(search.anyLot())
                .with("largestShare", new NothingFound(n).largestShare(confidence))
                .saying("samples.large")
                .saying("samples.random");
    }

    private Answer ofLot(ZeroFailure search, int items) {
        SampleSize size = search.lot(items);
        if (size instanceof SampleSize.NoneIsEnough none) {
            throw NoAnswer.of("sensitivity", "samples.none-enough", Answer.forPeople(none.best()));
        }
        return of((SampleSize.Enough) size)
                .with("faulty", search.faulty(items))
                .saying(sensitivity == 1 ? "samples.lot" : "samples.lot-imperfect")
                .saying("samples.random");
    }

    private static Answer of(SampleSize.Enough enough) {
        return Answer.of().with("n", enough.n()).with("reached", enough.reached());
    }
}
