package wickbench.journal.services;

import java.nio.file.Path;
import java.util.OptionalLong;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.StationId;
import wickbench.api.progress.Progress;

/** The proofs of the journal as a service. */
@Component(service = Proofs.class)
public final class ProofService implements Proofs {
    private final OpenJournal open;

    @Activate
    public ProofService(@Reference OpenJournal open) {
        this.open = open;
    }

    @Override
    public EntryProof prove(EntryRef entry, OptionalLong against) {
        return open.journal().proofs().prove(entry, against);
    }

    @Override
    public Comparison compare(String checkpoint) {
        return open.journal().proofs().compare(checkpoint);
    }

    @Override
    public Checkpoint exportTiles(StationId station, Path folder, Progress progress) {
        return open.journal().proofs().exportTiles(station, folder, progress);
    }
}
