package wickbench.journal.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Verification;
import wickbench.api.words.Decimals;
import wickbench.shell.PageContext;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.Job;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Type;

/** What this station has recorded, under which seal, and whether it holds. */
final class StationPanel {
    /** More than anybody reads; the command line prints all. */
    private static final int FINDINGS = 12;

    private final PageContext context;
    private final JournalDoors doors;
    private final Panel panel;
    private Optional<Job> verifying = Optional.empty();
    private Optional<Steps> watched = Optional.empty();
    private Button verify;

    StationPanel(Composite parent, PageContext context, JournalDoors doors, Runnable grown) {
        this.context = context;
        this.doors = doors;
        panel = new Panel(parent, context, "station", grown);
    }

    void fill(JournalDoors.Known known) {
        known.trouble().ifPresent(text -> note(Meaning.ALARM, text));
        known.status().ifPresent(this::facts);
        verify = panel.mainButton("verify.act", this::press);
        verify.setEnabled(known.begun());
        known.status()
                .flatMap(JournalStatus::checkpoint)
                .ifPresent(checkpoint -> panel.button("checkpoint.copy", () -> copy(checkpoint)));
        if (known.begun()) {
            panel.say(Meaning.NEUTRAL, JournalUiWords.get("verify.not"), JournalUiWords.get("verify.not.text"));
        }
    }

    private void note(Meaning meaning, String text) {
        Fit.wide(new Note(panel.content(), context.theme(), meaning, text));
    }

    private void facts(JournalStatus status) {
        status.readOnly().ifPresent(why -> note(Meaning.ALARM, why));
        status.notices().forEach(text -> note(Meaning.CAUTION, text));
        if (status.founding().isEmpty()) {
            context.theme().controls().text(panel.content(), Type.BODY, JournalUiWords.get("station.unfounded"));
        }
        Facts facts = new Facts(panel.content(), context.theme());
        status.founding().ifPresent(founding -> {
            facts.add(JournalUiWords.get("fact.station"), founding.station() + ", " + founding.zone());
            if (founding.simulated()) {
                facts.add(JournalUiWords.get("fact.clock"), JournalUiWords.get("fact.simulated"));
            }
        });
        facts.add(JournalUiWords.get("fact.home"), ShownPath.of(status.folder()));
        facts.add(JournalUiWords.get("fact.size"), Decimals.grouped(status.size()));
        facts.add(JournalUiWords.get("fact.root"), Type.MONO, digits(status.root()));
        facts.add(JournalUiWords.get("fact.checkpoint"), checkpoint(status));
        status.keyFingerprint().ifPresent(key -> facts.add(JournalUiWords.get("fact.key"), Type.MONO, digits(key)));
    }

    private static String checkpoint(JournalStatus status) {
        return status.checkpoint()
                .map(made -> made.size() == status.size()
                        ? JournalUiWords.get("fact.checkpoint.all", Decimals.grouped(made.size()))
                        : JournalUiWords.get(
                                "fact.checkpoint.behind",
                                Decimals.grouped(made.size()),
                                Decimals.grouped(status.size() - made.size())))
                .orElseGet(() -> JournalUiWords.get("fact.checkpoint.none"));
    }

    /** Breaks digits into groups of eight, so that people can compare them by eye and lines can break. */
    static String digits(Hash hash) {
        return hash.hex().replaceAll("(.{8})(?=.)", "$1 ");
    }

    private void copy(Checkpoint checkpoint) {
        Clipboard clipboard = new Clipboard(context.theme().display());
        clipboard.setContents(new Object[] {checkpoint.note()}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        context.say(JournalUiWords.get("checkpoint.copied", Decimals.grouped(checkpoint.size())));
    }

    private void press() {
        if (verifying.filter(Job::running).isPresent()) {
            verifying.get().cancel();
            watched = Optional.empty();
            over();
            panel.say(Meaning.NEUTRAL, JournalUiWords.get("verify.stopped"), JournalUiWords.get("verify.stopped.text"));
        } else {
            begin();
        }
    }

    private void begin() {
        verify.setText(JournalUiWords.get("verify.stop"));
        panel.say(Meaning.NOTICE, JournalUiWords.get("verify.running"), JournalUiWords.get("verify.running.text", 0));
        Steps steps = new Steps(percent -> update(() -> running(percent)));
        watched = Optional.of(steps);
        verifying = Optional.of(context.jobs()
                .run(
                        JournalUiWords.get("verify.work"),
                        progress -> {
                            Verification shown = doors.journal().verify(steps.watching(progress));
                            // a job that was cancelled delivers nothing, and this is to be told then too
                            update(() -> take(steps, shown));
                            return shown;
                        },
                        shown -> {},
                        failure -> update(() -> {
                            over();
                            panel.fail(failure);
                        })));
    }

    /** Changes the panel unless the page was filled anew since. */
    private void update(Runnable change) {
        context.update(() -> {
            if (!verify.isDisposed()) {
                change.run();
            }
        });
    }

    private void running(int percent) {
        if (verifying.filter(Job::running).isPresent()) {
            panel.say(
                    Meaning.NOTICE,
                    JournalUiWords.get("verify.running"),
                    JournalUiWords.get("verify.running.text", percent));
        }
    }

    private void over() {
        verify.setText(JournalUiWords.get("verify.act"));
    }

    private void take(Steps steps, Verification shown) {
        if (watched.filter(steps::equals).isEmpty()) {
            // stopped here, said so, and perhaps begun again
            return;
        }
        over();
        if (!shown.complete()) {
            panel.say(Meaning.NEUTRAL, JournalUiWords.get("verify.stopped"), JournalUiWords.get("verify.stopped.text"));
        } else if (shown.holds()) {
            panel.say(
                    Meaning.CALM,
                    JournalUiWords.get("verify.holds"),
                    JournalUiWords.get(
                            "verify.holds.text",
                            Decimals.grouped(shown.entries()),
                            Decimals.grouped(shown.checkpoints())));
        } else {
            panel.say(Meaning.ALARM, JournalUiWords.get("verify.broken"), broken(shown.findings()));
        }
    }

    private static String broken(List<Verification.Broken> findings) {
        String first = findings.stream()
                .limit(FINDINGS)
                .map(broken -> JournalUiWords.get("verify.finding", broken.where(), broken.text()))
                .collect(Collectors.joining("\n"));
        return findings.size() > FINDINGS
                ? first + "\n" + JournalUiWords.get("verify.more", findings.size() - FINDINGS)
                : first;
    }
}
