package wickbench.figures.commands;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import wickbench.api.check.BadInput;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Reckoned;
import wickbench.figures.sums.Sum;

/** The command of one sum: its inputs are its arguments, its answer is printed, and kept where that is asked. */
final class SumCommand implements Callable<Integer> {
    private static final String KEEP = "--keep";
    private static final String ABOUT = "--about";

    private final Sum sum;
    private final KeptSums kept;
    private final Terminal terminal;
    private final CommandLine line;

    SumCommand(Sum sum, KeptSums kept, Terminal terminal) {
        this.sum = sum;
        this.kept = kept;
        this.terminal = terminal;
        CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name(sum.id());
        spec.usageMessage().description(literal(sum.line()));
        new Arguments(sum).addTo(spec);
        if (!sum.inputs().isEmpty()) {
            spec.addOption(OptionSpec.builder(KEEP)
                            .description(literal(FiguresWords.get("keep")))
                            .build())
                    .addOption(OptionSpec.builder(ABOUT)
                            .type(String.class)
                            .paramLabel("TEXT")
                            .description(literal(FiguresWords.get("about")))
                            .build());
        }
        // a negative number is then told at its place, not as an option that nobody knows
        line = new CommandLine(spec).setUnmatchedOptionsArePositionalParams(true);
    }

    CommandLine line() {
        return line;
    }

    /** In picocli's descriptions a per cent sign begins a format. */
    static String literal(String text) {
        return text.replace("%", "%%");
    }

    @Override
    public Integer call() {
        CommandLine.ParseResult parsed = line.getParseResult();
        boolean keep = parsed.hasMatchedOption(KEEP);
        Optional<PersonId> keeper = keep ? Optional.of(terminal.actorOrRefuse()) : Optional.empty();
        Reckoned reckoned = sum.reckon(new Arguments(sum).given(parsed));
        if (reckoned instanceof Reckoned.Wrong wrong) {
            throw new BadInput(wrong.complaint());
        }
        Reckoned.Done done = (Reckoned.Done) reckoned;
        Optional<String> about = Optional.ofNullable(parsed.matchedOptionValue(ABOUT, (String) null));
        Optional<EntryRef> entry = keeper.map(by -> kept.keep(by, sum, done, about));
        AnswerPrint print = new AnswerPrint(terminal);
        print.print(
                entry.map(ref -> done.answer().figures().with("kept", new Json.Text(ref.toString())))
                        .orElse(done.answer().figures()),
                done.answer().remarks());
        return 0;
    }
}
