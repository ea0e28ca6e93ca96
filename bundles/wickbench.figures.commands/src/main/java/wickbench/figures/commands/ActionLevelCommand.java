package wickbench.figures.commands;

import java.math.BigDecimal;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.level.ActionLevel;

/** {@code figures action-level}: the concentration at which the amount eaten holds the reference dose. */
@Command(name = "action-level")
final class ActionLevelCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--dose", required = true, paramLabel = "MG")
    private BigDecimal dose;

    @Option(names = "--amount", required = true, paramLabel = "G")
    private BigDecimal amount;

    @Override
    public Integer call() {
        return figures.answer(() -> {
            ActionLevel level = ActionLevel.of(dose, amount);
            return Answer.of()
                    .with("mgPerKg", level.mgPerKg())
                    .with("oneDecimal", level.rounded(1))
                    .saying("level.action")
                    .saying("level.caution");
        });
    }
}
