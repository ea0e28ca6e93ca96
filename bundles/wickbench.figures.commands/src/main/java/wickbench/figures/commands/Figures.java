package wickbench.figures.commands;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wickbench.api.command.Terminal;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Sums;

/** One command for each sum, made from its description, and one for what was kept. */
@Command(name = "figures", synopsisSubcommandLabel = "COMMAND")
final class Figures {
    private final KeptSums kept;
    private final Terminal terminal;

    Figures(KeptSums kept, Terminal terminal) {
        this.kept = kept;
        this.terminal = terminal;
    }

    @Spec
    void spec(CommandSpec spec) {
        Sums.all().forEach(sum -> spec.addSubcommand(sum.id(), new SumCommand(sum, kept, terminal).line()));
        spec.addSubcommand("kept", new CommandLine(new KeptCommand(kept, terminal)));
    }
}
