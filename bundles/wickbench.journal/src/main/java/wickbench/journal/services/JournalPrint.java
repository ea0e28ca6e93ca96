package wickbench.journal.services;

import java.util.Optional;
import wickbench.api.command.Terminal;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Founding;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Verification;
import wickbench.api.words.Words;

/** What the journal says, for people. */
final class JournalPrint {
    private final Words words;
    private final Terminal terminal;

    JournalPrint(Words words, Terminal terminal) {
        this.words = words;
        this.terminal = terminal;
    }

    void status(JournalStatus status) {
        line("status.folder", status.folder());
        status.founding().ifPresentOrElse(this::founding, () -> line("status.unfounded"));
        line("status.size", status.size());
        line("status.root", status.root());
        status.keyFingerprint().ifPresent(key -> line("status.key", key));
        status.checkpoint()
                .ifPresentOrElse(
                        made -> line("status.checkpoint", made.size(), made.root()),
                        () -> line("status.checkpoint.none"));
        status.notices().forEach(notice -> line("status.notice", notice));
        status.readOnly().ifPresent(why -> line("status.read-only", why));
    }

    private void founding(Founding founding) {
        line("status.station", founding.station(), founding.zone());
        founding.simulatedSeed().ifPresent(seed -> line("status.simulated", seed));
    }

    void verification(Verification verification) {
        verification.findings().forEach(broken -> line("verify.finding", broken.where(), broken.text()));
        line(
                outcome(verification),
                verification.entries(),
                verification.checkpoints(),
                verification.findings().size());
        line("status.root", verification.root());
    }

    private static String outcome(Verification verification) {
        if (!verification.complete()) {
            return "verify.stopped";
        }
        return verification.holds() ? "verify.holds" : "verify.broken";
    }

    void checkpoint(Optional<Checkpoint> checkpoint) {
        checkpoint.ifPresentOrElse(
                made -> made.note().lines().forEach(terminal::line), () -> line("status.checkpoint.none"));
    }

    private void line(String key, Object... values) {
        terminal.line(words.get(key, values));
    }
}
