package wickbench.journal.services;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.backup.Backups;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.home.Home;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.Verification;
import wickbench.api.words.Words;

/** {@code journal}: how it stands, whether it holds, a checkpoint of now, and proofs for others, and back-ups. */
@Component(property = CommandSet.NAME + "=journal")
public final class JournalCommand implements CommandSet {
    private final Journal journal;
    private final Proofs proofs;
    private final Home home;
    private final Backups backups;
    private final Words words = Words.of(JournalCommand.class, "journal");

    @Activate
    public JournalCommand(
            @Reference Journal journal, @Reference Proofs proofs, @Reference Home home, @Reference Backups backups) {
        this.journal = journal;
        this.proofs = proofs;
        this.home = home;
        this.backups = backups;
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

        @Command(name = "proof")
        int proof(
                @Parameters(paramLabel = "ID") String id,
                @Option(names = "--against", paramLabel = "SIZE") Optional<Long> against) {
            return proving().prove(id, against);
        }

        @Command(name = "compare")
        int compare(
                @Parameters(paramLabel = "CHECKPOINT", index = "0..*", arity = "1..*") List<String> checkpoint,
                @Parameters(paramLabel = "FILE", index = "0", hidden = true) Path file) {
            return proving().compare(checkpoint, file);
        }

        @Command(name = "export-tiles")
        int exportTiles(
                @Parameters(paramLabel = "DIR") Path folder,
                @Option(names = "--station", paramLabel = "STATION") Optional<String> station) {
            return proving().export(folder, station);
        }

        @Command(name = "backup")
        int backUp(@Parameters(paramLabel = "DIR", arity = "0..1") Optional<Path> folder) {
            return keeping().backUp(folder);
        }

        @Command(name = "backups")
        int backups(
                @Option(names = "--plan", paramLabel = "DIR") Optional<Path> plan,
                @Option(names = "--days", paramLabel = "DAYS", defaultValue = "1") int days,
                @Option(names = "--keep", paramLabel = "NUMBER", defaultValue = "14") int keep,
                @Option(names = "--no-plan") boolean none) {
            return keeping().state(plan, days, keep, none);
        }

        @Command(name = "restore")
        int restore(
                @Parameters(paramLabel = "DIR", index = "0") Path backup,
                @Option(names = "--known", paramLabel = "FILE") Optional<Path> known) {
            return keeping().restore(backup, known);
        }

        private BackupCommands keeping() {
            return new BackupCommands(home, backups, words, terminal);
        }

        private ProofCommands proving() {
            return new ProofCommands(journal, proofs, words, terminal);
        }
    }
}
