package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.store.Intermittent;

/** {@code figures demand}: the rate of a demand that comes now and then. */
@Command(name = "demand")
final class DemandCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--alpha", paramLabel = "A")
    private double alpha = 0.1;

    @Override
    public Integer call() {
        Table table = TableFile.read(file, "demand");
        return figures.answer(table, () -> answer(table));
    }

    private Answer answer(Table table) {
        Intermittent demand =
                Intermittent.of(Arrays.stream(table.numbers(0)).boxed().toList(), alpha);
        return Answer.of()
                .with("plain", demand.plain())
                .with("sba", demand.halfCorrected())
                .with("sbj", demand.fullCorrected())
                .with("size", demand.size())
                .with("interval", demand.interval())
                .saying("demand.formula");
    }
}
