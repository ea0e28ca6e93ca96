package wickbench.index;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
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

final class ListJournal implements Journal {
    private static final StationId HERE = new StationId("station-1");
    final List<Entry> entries = new ArrayList<>();

    @Override
    public Optional<Founding> founding() {
        return Optional.of(Founding.defaults(ZoneId.of("UTC")));
    }

    @Override
    public Founding found(Founding wanted) {
        return wanted;
    }

    @Override
    public List<StationId> stations() {
        return List.of(HERE);
    }

    @Override
    public long size(StationId station) {
        return entries.size();
    }

    @Override
    public List<Entry> append(List<Draft> drafts) {
        List<Entry> added = new ArrayList<>();
        for (Draft d : drafts) {
            Hash leaf = Hash.ofContent(entries.size() + d.body().canonical());
            added.add(new Entry(
                    new EntryRef(HERE, entries.size() + added.size()),
                    d.id(),
                    leaf,
                    Instant.EPOCH,
                    ZoneOffset.UTC,
                    d.by(),
                    d.kind(),
                    d.v(),
                    d.body(),
                    leaf));
        }
        entries.addAll(added);
        return added;
    }

    @Override
    public void read(StationId station, long from, Predicate<Entry> reader) {
        for (Entry e : entries.subList((int) from, entries.size())) {
            if (!reader.test(e)) {
                return;
            }
        }
    }

    @Override
    public Optional<Entry> entry(EntryRef ref) {
        return ref.seq() < entries.size() ? Optional.of(entries.get((int) ref.seq())) : Optional.empty();
    }

    @Override
    public Optional<String> line(EntryRef ref) {
        return Optional.empty();
    }

    @Override
    public Optional<Checkpoint> checkpoint() {
        return Optional.empty();
    }

    @Override
    public JournalStatus status() {
        return new JournalStatus(
                Path.of("."),
                founding(),
                0,
                Hash.ofContent(""),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    @Override
    public Verification verify(Progress progress) {
        return new Verification(0, 0, Hash.ofContent(""), List.of(), true);
    }
}
