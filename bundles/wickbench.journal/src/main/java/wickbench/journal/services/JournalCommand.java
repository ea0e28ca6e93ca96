package wickbench.journal.services;

import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Verification;
import wickbench.api.words.Words;

/** {@code journal}: how it stands, whether it holds, and a checkpoint of now. */
@Component(property = CommandSet.NAME + "=journal")
public final class JournalCommand implements CommandSet {
    private final Journal journal;
    private final Words words = Words.of(JournalCommand.class, "journal");

    @Activate
    public JournalCommand(@Reference Journal journal) {
        this.journal = journal;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "journal", synopsisSubcommandLabel = "COMMAND")
    private final class Group {
        private final Terminal terminal;

        Group(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "status")
        int status() {
            JournalStatus status = journal.status();
            if (terminal.json()) {
                terminal.json(JournalJson.status(status));
            } else {
                new JournalPrint(words, terminal).status(status);
            }
            return 0;
        }

        @Command(name = "verify")
        int verify() {
            Verification verification = journal.verify(terminal.progress(words.get("verify.progress")));
            if (terminal.json()) {
                terminal.json(JournalJson.verification(verification));
            } else {
                new JournalPrint(words, terminal).verification(verification);
            }
            return verification.holds() ? 0 : 1;
        }

        @Command(name = "checkpoint")
        int checkpoint() {
            Optional<Checkpoint> checkpoint = journal.checkpoint();
            if (terminal.json()) {
                terminal.json(JournalJson.checkpoint(checkpoint));
            } else {
                new JournalPrint(words, terminal).checkpoint(checkpoint);
            }
            return 0;
        }
    }
}
