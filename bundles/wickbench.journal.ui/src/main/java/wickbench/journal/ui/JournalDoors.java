package wickbench.journal.ui;

import java.util.List;
import java.util.Optional;
import wickbench.api.backup.BackupState;
import wickbench.api.backup.Backups;
import wickbench.api.check.Refusal;
import wickbench.api.index.Index;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.Sighting;
import wickbench.api.journal.Stations;
import wickbench.api.person.PersonId;

/** The ports through which the page works. */
record JournalDoors(
        Journal journal, Proofs proofs, Backups backups, Index index, Stations stations, ClashDoors clashes) {

    private static final Sharing ALONE =
            new Sharing(Optional.empty(), Optional.empty(), 0, List.of(), List.of(), List.of());

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
            List<Sighting> sightings,
            ClashDoors.Known clashes) {
        /** Tells whether anything was ever recorded. */
        boolean begun() {
            return status.filter(now -> now.size() == 0).isEmpty();
        }
    }

    /**
     * Reads it; not on the UI thread.
     *
     * @param actor who has the desk
     */
    Known known(Optional<PersonId> actor) {
        try {
            JournalStatus status = journal.status();
            return new Known(
                    Optional.of(status),
                    Optional.empty(),
                    index.views(),
                    index.notices(),
                    backups.state(),
                    stations.sharing(),
                    index.sightings(),
                    clashes.known(journal, actor));
        } catch (Refusal tampered) {
            return new Known(
                    Optional.empty(),
                    Optional.of(tampered.getMessage()),
                    List.of(),
                    List.of(),
                    backups.state(),
                    ALONE,
                    List.of(),
                    ClashDoors.Known.NONE);
        }
    }
}
