package wickbench.figures.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.proportion.Interval;

/** {@code figures proportion}: a proportion with its limits. */
@Command(name = "proportion")
final class ProportionCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "X")
    private long positives;

    @Parameters(index = "1", paramLabel = "N")
    private long tests;

    @Mixin
    private LevelOption level = new LevelOption();

    @Option(names = "--interval", paramLabel = "NAME")
    private String interval = Interval.WILSON.code();

    @Override
    public Integer call() {
        Interval chosen = Choice.of("--interval", interval, Interval.values(), Interval::code);
        return figures.answer(
                () -> Answer.of(chosen.of(positives, tests, level.value())).saying("proportion." + chosen.code()));
    }
}
