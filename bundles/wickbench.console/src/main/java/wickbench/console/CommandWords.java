package wickbench.console;

import java.util.Locale;
import java.util.ResourceBundle;
import picocli.CommandLine;

/**
 * Gives a command the words that its own bundle keeps for it in {@code OSGI-INF/l10n/commands.properties}.
 *
 * <p>The keys are picocli's: {@code wickbench.judge.usage.description}, {@code wickbench.judge.sheet} for {@code --sheet}.
 */
final class CommandWords {
    private static final String FILE = "OSGI-INF.l10n.commands";

    private CommandWords() {}

    static CommandLine given(Object command) {
        ClassLoader home = command.getClass().getClassLoader();
        return new CommandLine(command).setResourceBundle(ResourceBundle.getBundle(FILE, Locale.getDefault(), home));
    }
}
