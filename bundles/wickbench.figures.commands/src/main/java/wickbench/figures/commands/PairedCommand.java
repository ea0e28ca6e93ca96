package wickbench.figures.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.agreement.McNemar;
import wickbench.figures.proportion.Differences;

/** {@code figures paired}: two methods on the same samples. */
@Command(name = "paired")
final class PairedCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "A")
    private long both;

    @Parameters(index = "1", paramLabel = "B")
    private long firstOnly;

    @Parameters(index = "2", paramLabel = "C")
    private long secondOnly;

    @Parameters(index = "3", paramLabel = "D")
    private long neither;

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        return figures.answer(this::answer);
    }

    private Answer answer() {
        Answer difference = DifferenceCommand.of(
                        Differences.paired(both, firstOnly, secondOnly, neither, level.value()))
                .saying("paired.hybrid");
        return firstOnly + secondOnly == 0
                ? difference.with("mcnemar", Json.Null.NULL).saying("paired.none-differ")
                : tested(difference, McNemar.of(firstOnly, secondOnly));
    }

    private static Answer tested(Answer difference, McNemar test) {
        return difference
                .with(
                        "mcnemar",
                        Json.object()
                                .with("plain", chi2(test.plain(), test.plainP()))
                                .with("corrected", chi2(test.corrected(), test.correctedP()))
                                .with("exact", Json.object().with("p", Answer.number(test.exactP()))))
                .saying("paired.mcnemar");
    }

    private static Json.Obj chi2(double statistic, double p) {
        return Json.object().with("chi2", Answer.number(statistic)).with("p", Answer.number(p));
    }
}
