package wickbench.figures.commands;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.agreement.Diagnostic;

/** {@code figures diagnostic}: a method against a reference. */
@Command(name = "diagnostic")
final class DiagnosticCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "TP")
    private long truePositives;

    @Parameters(index = "1", paramLabel = "FN")
    private long falseNegatives;

    @Parameters(index = "2", paramLabel = "FP")
    private long falsePositives;

    @Parameters(index = "3", paramLabel = "TN")
    private long trueNegatives;

    @Option(names = "--prevalence", paramLabel = "P")
    private Optional<Double> prevalence = Optional.empty();

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        return figures.answer(() ->
                answer(Diagnostic.of(truePositives, falseNegatives, falsePositives, trueNegatives, level.value())));
    }

    private Answer answer(Diagnostic of) {
        double se = of.sensitivity().estimate();
        double sp = of.specificity().estimate();
        long all = truePositives + falseNegatives + falsePositives + trueNegatives;
        double share = prevalence.orElse((double) (truePositives + falseNegatives) / all);
        return Answer.of()
                .withLimits("sensitivity", of.sensitivity())
                .withLimits("specificity", of.specificity())
                .with("youden", of.youden())
                .with("youdenSe", of.youdenSe())
                .with("positiveLikelihoodRatio", Answer.number(of.positiveRatio()))
                .with("negativeLikelihoodRatio", Answer.number(of.negativeRatio()))
                .with("oddsRatio", Answer.number(of.oddsRatio()))
                .with("prevalence", share)
                .with("positivePredictiveValue", Answer.number(Diagnostic.positiveValue(se, sp, share)))
                .with("negativePredictiveValue", Answer.number(Diagnostic.negativeValue(se, sp, share)))
                .saying("diagnostic.formula")
                .saying(prevalence.isPresent() ? "diagnostic.prevalence" : "diagnostic.own-prevalence");
    }
}
