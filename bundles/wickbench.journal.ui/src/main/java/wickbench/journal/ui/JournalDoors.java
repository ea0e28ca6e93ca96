package wickbench.journal.ui;

import java.util.List;
import java.util.Optional;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.api.check.Refusal;
import wickbench.api.clash.Clash;
import wickbench.api.index.Index;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Stations;

/** The ports through which the page works. */
record JournalDoors(Journal journal, Proofs proofs, Backups backups, Index index, Stations stations) {

    private static final Sharing ALONE = new Sharing(Optional.empty(), Optional.empty(), 0, List.of(), List.of());

    /**
     * What the page shows.
     *
     * @param status empty when the journal contradicts its seal
     * @param trouble why it cannot be shown; empty when it can
     */
    record Known(
            Optional<JournalStatus> status,
            Optional<String> trouble,
            List<ViewState> views,
            List<String> indexNotices,
            BackupState backups,
            Sharing sharing,
            List<Clash> clashes) {
        /** Tells whether anything was ever recorded. */
        boolean begun() {
            return status.filter(now -> now.size() == 0).isEmpty();
        }
    }

    /** Reads it; not on the UI thread. */
    Known known() {
        try {
            JournalStatus status = journal.status();
            return new Known(
                    Optional.of(status),
                    Optional.empty(),
                    index.views(),
                    index.notices(),
                    backups.state(),
                    stations.sharing(),
                    index.clashes());
        } catch (Refusal tampered) {
            return new Known(
                    Optional.empty(),
                    Optional.of(tampered.getMessage()),
                    List.of(),
                    List.of(),
                    backups.state(),
                    ALONE,
                    List.of());
        }
    }
}
