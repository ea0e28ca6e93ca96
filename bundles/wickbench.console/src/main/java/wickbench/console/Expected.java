package wickbench.console;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.words.Words;

/** Says which commands there are, where one of several was to be named: picocli only says that none was. */
final class Expected {
    private static final Words WORDS = Words.of(Expected.class, "console");

    private Expected() {}

    /** Returns what to say of a call that picocli does not take. */
    static Exception told(ParameterException e) {
        CommandLine line = e.getCommandLine();
        List<String> commands = line.getSubcommands().keySet().stream().sorted().toList();
        if (commands.isEmpty() || e instanceof UnmatchedArgumentException unmatched && unmatched.isUnknownOption()) {
            return e;
        }
        String expected = WORDS.get("subcommand.expected", String.join(", ", commands));
        return new BadInput(Complaint.of(
                line.getCommandSpec().qualifiedName(),
                e instanceof UnmatchedArgumentException unmatched
                        ? WORDS.get(
                                "subcommand.found",
                                expected,
                                unmatched.getUnmatched().get(0))
                        : expected));
    }
}
