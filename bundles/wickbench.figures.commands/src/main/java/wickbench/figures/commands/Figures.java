package wickbench.figures.commands;

import java.util.OptionalInt;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.figures.NoAnswer;

/** What all figures share: they answer on the terminal, or say in one line why there is no answer. */
@Command(
        name = "figures",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            ProportionCommand.class,
            DifferenceCommand.class,
            PairedCommand.class,
            LaboratoriesCommand.class,
            DetectionCommand.class,
            BlankCommand.class,
            AgreementCommand.class,
            RatersCommand.class,
            AttributesCommand.class,
            DiagnosticCommand.class,
            SeeingCommand.class,
            ActionLevelCommand.class,
            DosesCommand.class,
            CarryOverCommand.class,
            SamplesCommand.class,
            AcceptanceCommand.class,
            ParticlesCommand.class,
            TrendCommand.class,
            WarmthCommand.class,
            ReorderCommand.class,
            DemandCommand.class
        })
final class Figures {
    private final Terminal terminal;

    Figures(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Answers from what was given on the command line. */
    int answer(Supplier<Answer> computed) {
        try {
            new AnswerPrint(terminal).print(computed.get());
            return 0;
        } catch (NoAnswer none) {
            throw new BadInput(
                    none.field().isEmpty()
                            ? Complaint.of(FiguresWords.get("input"), none.text())
                            : Complaint.of(none.field(), none.text()));
        }
    }

    /** Answers from a table; a complaint names the file and, where it concerns one row, the line. */
    int answer(Table table, Supplier<Answer> computed) {
        try {
            new AnswerPrint(terminal).print(computed.get());
            return 0;
        } catch (NoAnswer none) {
            OptionalInt line = none.row().isPresent()
                    ? OptionalInt.of(table.lineOf(none.row().getAsInt()))
                    : OptionalInt.empty();
            throw new BadInput(new Complaint(table.source(), line, none.field(), none.text()));
        }
    }
}
