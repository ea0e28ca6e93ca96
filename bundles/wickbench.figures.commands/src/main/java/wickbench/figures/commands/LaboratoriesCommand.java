package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.proportion.Laboratories;
import wickbench.figures.proportion.LaboratoryStudy;

/** {@code figures laboratories}: the probability of detection between laboratories. */
@Command(name = "laboratories")
final class LaboratoriesCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        Table table = TableFile.read(file, "positives", "tests");
        return figures.answer(
                table,
                () -> answer(
                        LaboratoryStudy.of(table.counts(0, "positives"), table.counts(1, "tests"), level.value())));
    }

    private static Answer answer(Laboratories study) {
        return Answer.of()
                .withLimits("lpod", study.lpod())
                .with("repeatability", variance(study.repeatability()))
                .with("laboratory", variance(study.betweenLaboratories()))
                .with("reproducibility", variance(study.reproducibility()))
                .with("podVariance", study.podVariance())
                .with(
                        "homogeneity",
                        study.homogeneity().<Json>map(LaboratoriesCommand::test).orElse(Json.Null.NULL))
                .saying(study.byLaboratories() ? "laboratories.student" : "laboratories.pooled")
                .saying("laboratories.variances");
    }

    private static Json variance(double variance) {
        return Json.object().with("variance", Answer.number(variance)).with("sd", Answer.number(Math.sqrt(variance)));
    }

    private static Json test(Laboratories.Homogeneity test) {
        return Json.object()
                .with("chi2", Answer.number(test.chiSquared()))
                .with("df", test.df())
                .with("p", Answer.number(test.p()));
    }
}
