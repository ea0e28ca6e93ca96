package wickbench.figures.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.Limits;
import wickbench.figures.proportion.Differences;

/** {@code figures difference}: two proportions of separate samples. */
@Command(name = "difference")
final class DifferenceCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "X1")
    private long firstPositives;

    @Parameters(index = "1", paramLabel = "N1")
    private long firstTests;

    @Parameters(index = "2", paramLabel = "X2")
    private long secondPositives;

    @Parameters(index = "3", paramLabel = "N2")
    private long secondTests;

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        return figures.answer(
                () -> of(Differences.unpaired(firstPositives, firstTests, secondPositives, secondTests, level.value()))
                        .saying("difference.hybrid"));
    }

    static Answer of(Limits limits) {
        return Answer.of()
                .with("difference", limits.estimate())
                .with("lower", limits.lower())
                .with("upper", limits.upper());
    }
}
