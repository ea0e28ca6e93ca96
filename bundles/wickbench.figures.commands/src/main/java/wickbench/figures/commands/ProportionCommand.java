package wickbench.figures.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.proportion.Proportions;

/** {@code figures proportion}: a proportion with its limits. */
@Command(name = "proportion")
final class ProportionCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "X")
    private long positives;

    @Parameters(index = "1", paramLabel = "N")
    private long tests;

    @Option(names = "--level", paramLabel = "L")
    private double level = 0.95;

    @Override
    public Integer call() {
        return figures.answer(
                () -> Answer.of(Proportions.wilson(positives, tests, level)).saying("proportion.wilson"));
    }
}
