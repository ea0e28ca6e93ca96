package wickbench.journal.services;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/** The journal as a service. */
@Component(service = Journal.class)
public final class JournalService implements Journal {
    private final OpenJournal open;

    @Activate
    public JournalService(@Reference OpenJournal open) {
        this.open = open;
    }

    @Override
    public Optional<Founding> founding() {
        return open.journal().founding();
    }

    @Override
    public Founding found(Founding wanted) {
        return open.journal().found(wanted);
    }

    @Override
    public List<StationId> stations() {
        return open.journal().stations();
    }

    @Override
    public long size(StationId station) {
        return open.journal().size(station);
    }

    @Override
    public List<Entry> append(List<Draft> drafts) {
        return open.journal().append(drafts);
    }

    @Override
    public void read(StationId station, long from, Predicate<Entry> reader) {
        open.journal().read(station, from, reader);
    }

    @Override
    public Optional<Entry> entry(EntryRef ref) {
        return open.journal().entry(ref);
    }

    @Override
    public Optional<String> line(EntryRef ref) {
        return open.journal().line(ref);
    }

    @Override
    public Optional<Checkpoint> checkpoint(StationId station) {
        return open.journal().checkpoint(station);
    }

    @Override
    public Optional<Hash> keyFingerprint(StationId station) {
        return open.journal().keyFingerprint(station);
    }

    @Override
    public Optional<Checkpoint> checkpoint() {
        return open.journal().checkpoint();
    }

    @Override
    public JournalStatus status() {
        return open.journal().status();
    }

    @Override
    public Verification verify(Progress progress) {
        return open.journal().verify(progress);
    }
}
