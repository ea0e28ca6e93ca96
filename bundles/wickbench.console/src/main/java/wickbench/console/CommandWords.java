package wickbench.console;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import wickbench.api.words.Words;

/**
 * Gives a command the words that its own bundle keeps for it in {@code OSGI-INF/l10n/commands.properties}.
 *
 * <p>The keys are picocli's: {@code wickbench.judge.usage.description}, {@code wickbench.judge.sheet} for {@code --sheet}.
 */
final class CommandWords {
    private static final Words WORDS = Words.of(CommandWords.class, "console");

    private CommandWords() {}

    /** Returns the command with its words, and with {@code --help} on it and all its subcommands. */
    static CommandLine given(Object command) {
        CommandLine line = new CommandLine(command);
        helped(line);
        return line.setResourceBundle(Words.of(command.getClass(), "commands").file());
    }

    private static void helped(CommandLine line) {
        line.getCommandSpec()
                .usageMessage()
                .synopsisHeading(WORDS.get("help.usage") + " ")
                .commandListHeading(WORDS.get("help.commands") + "%n");
        line.getCommandSpec()
                .addOption(OptionSpec.builder("-h", "--help")
                        .usageHelp(true)
                        .description(WORDS.get("help"))
                        .build());
        line.getSubcommands().values().forEach(CommandWords::helped);
    }
}
