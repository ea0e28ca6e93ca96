package wickbench.journal.ui;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.shell.Due;
import wickbench.shell.DueSource;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;

/**
 * Makes back-ups by the plan while a window is open, on a thread of its own, and tells the top bar where that fails.
 *
 * <p>Asked every minute. One that failed is tried again after as many questions as there are minutes in an hour.
 */
@Component
public final class BackupKeeper implements DueSource {
    private static final int PATIENCE = 60;
    private static final long END_MILLIS = 30_000;
    private static final Duration WEEK = Duration.ofDays(7);

    private final Backups backups;
    private final AtomicBoolean ending = new AtomicBoolean();
    private final AtomicReference<Optional<Thread>> running = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<String>> failed = new AtomicReference<>(Optional.empty());
    private int waited;

    @Activate
    public BackupKeeper(@Reference Backups backups) {
        this.backups = backups;
    }

    @Override
    public synchronized List<Due> due() {
        BackupState state = backups.state();
        if (!state.due()) {
            failed.set(Optional.empty());
            return List.of();
        }
        if (running.get().filter(Thread::isAlive).isEmpty() && (failed.get().isEmpty() || ++waited % PATIENCE == 0)) {
            begin();
        }
        return failed.get().map(reason -> List.of(late(state))).orElseGet(List::of);
    }

    private void begin() {
        Thread thread = new Thread(this::run, "wickbench-backup");
        thread.setDaemon(true);
        running.set(Optional.of(thread));
        thread.start();
    }

    private void run() {
        try {
            backups.backUpByPlan((done, total) -> !ending.get());
            failed.set(Optional.empty());
        } catch (RuntimeException e) {
            failed.set(Optional.of(String.valueOf(e.getMessage())));
        }
    }

    private static Due late(BackupState state) {
        String word = state.age()
                .map(old -> JournalUiWords.get("due.late", Ages.text(old)))
                .orElseGet(() -> JournalUiWords.get("due.never"));
        boolean longAgo = state.age().filter(old -> old.compareTo(WEEK) < 0).isEmpty();
        Meaning meaning = longAgo ? Meaning.CAUTION : Meaning.NOTICE;
        return new Due(new Mark(word, Panel.shape(meaning), meaning), "journal", "backup");
    }

    /** Lets a back-up that is under way stop at its next safe point, where it leaves nothing. */
    @Deactivate
    void end() throws InterruptedException {
        ending.set(true);
        Optional<Thread> thread = running.get();
        if (thread.isPresent()) {
            thread.get().join(END_MILLIS);
        }
    }
}
