package wickbench.journal;

import java.io.IOException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Seen;

/** This station's own journal: founds it, appends to it and signs it, one thread at a time. */
final class OwnWriting {
    private final Home home;
    private final HomeHold hold;
    private final Copies copies;
    private final OwnStation stations;
    private final Consumer<String> notices;
    private final ClockWatch clock = new ClockWatch();
    private final ReentrantLock writing = new ReentrantLock();
    private volatile Own own;
    /** That this home was made from a back-up, until that is recorded; touched by whoever may write. */
    private volatile Optional<RestoredMark> restored;
    /** Why this station may record nothing more, though its files could be written; blank while it may. */
    private volatile String refused = "";
    /** Why it may record nothing for now; blank while it may. */
    private volatile String held = "";

    OwnWriting(Home home, Disk disk, HomeHold hold, Copies copies, Consumer<String> notices) throws IOException {
        this.home = home;
        this.hold = hold;
        this.copies = copies;
        this.notices = notices;
        stations = new OwnStation(disk, home, hold.readOnly().isEmpty(), notices);
        own = stations.open();
        restored = RestoredMark.read(home.folder());
        restored.map(RestoredMark::notice).ifPresent(notices);
    }

    Own own() {
        return own;
    }

    /** Returns this station, once it is founded and unless it contradicts its seal. */
    Optional<Station> station() {
        return own instanceof Own.Open open ? Optional.of(open.station()) : Optional.empty();
    }

    /**
     * Writes the first entry.
     *
     * @param share knows the names that are taken, and begins once there is one more
     * @param news takes the entry
     */
    void found(Founding wanted, OwnShare share, List<Entry> news) {
        writing.lock();
        try {
            if (own.open().isPresent()) {
                throw new Refusal("journal.founded", Say.words("founded", home.folder()));
            }
            begin(wanted, share, news);
        } finally {
            writing.unlock();
        }
    }

    /** Appends entries, all or none; founds the station first when it has no entry yet. {@code news} takes all that was written. */
    List<Entry> append(List<Draft> drafts, OwnShare share, List<Entry> news) {
        writing.lock();
        try {
            StationWriter writer = writer(share, news);
            recordRestored(writer, news);
            List<Seen> seen = copies.untold();
            List<Entry> written = writer.append(
                    OwnShare.after(seen, drafts, home), home.clock().instant());
            news.addAll(written);
            clock.look(written).ifPresent(notices);
            copies.tell(seen, notices);
            List<Entry> entries = written.subList(written.size() - drafts.size(), written.size());
            if (writer.due()) {
                sealOrNote(writer);
            }
            return entries;
        } finally {
            writing.unlock();
        }
    }

    /** Records before anything else that this home was made from a back-up. */
    private void recordRestored(StationWriter writer, List<Entry> news) {
        restored.ifPresent(mark -> {
            news.addAll(writer.append(
                    List.of(mark.draft(Draft.randomId(home.chance()))),
                    home.clock().instant()));
            mark.remove(home.folder(), notices);
        });
        restored = Optional.empty();
    }

    private StationWriter writer(OwnShare share, List<Entry> news) {
        if (own.open().isEmpty()) {
            begin(Founding.defaults(ZoneId.systemDefault()), share, news);
        }
        if (!refused.isEmpty() || !held.isEmpty()) {
            throw Say.failed(refused.isEmpty() ? held : refused);
        }
        Own.Open open = own.open().orElseThrow();
        StationWriter writer =
                open.writer().orElseThrow(() -> Say.failed(hold.readOnly().orElseThrow()));
        if (!open.station().founded().founding().simulated()
                && home.simulatedSeed().isPresent()) {
            throw new Refusal("journal.clock", Say.words("clock.real", home.folder()));
        }
        return writer;
    }

    private void begin(Founding wanted, OwnShare share, List<Entry> news) {
        refuseUnwritable();
        OptionalLong seed = home.simulatedSeed();
        if (wanted.simulated() && !wanted.simulatedSeed().equals(seed)) {
            throw new Refusal("journal.clock", Say.words("clock.wanted", home.folder()));
        }
        share.refuseTaken(wanted.station());
        try {
            own = stations.found(new Founding(wanted.station(), wanted.zone(), seed));
            refuseUnwritable();
            share.begin();
            own.open()
                    .flatMap(open ->
                            open.station().reading().entry(open.station().kept(), 0))
                    .ifPresent(news::add);
        } catch (IOException | OutOfMemoryError e) {
            throw Say.failed(Say.words("failed.write", home.folder(), EntryFiles.reason(e)));
        }
    }

    private void refuseUnwritable() {
        hold.readOnly().or(own::failed).ifPresent(why -> {
            throw Say.failed(why);
        });
    }

    /** Signs what is there now; returns the newest checkpoint. */
    Optional<Checkpoint> checkpoint() {
        writing.lock();
        try {
            own.open().flatMap(Own.Open::writer).ifPresent(StationWriter::seal);
            return own.open().flatMap(open -> open.station().checkpoint());
        } finally {
            writing.unlock();
        }
    }

    /** Signs what is kept, and only notes a checkpoint that cannot be written. */
    void sealQuietly() {
        writing.lock();
        try {
            own.open().flatMap(Own.Open::writer).ifPresent(this::sealOrNote);
        } finally {
            writing.unlock();
        }
    }

    /** Signs what is kept; a checkpoint that cannot be written takes nothing back of what was acknowledged. */
    private void sealOrNote(StationWriter writer) {
        if (restored()) {
            // whatever is not signed yet was taken back, and has its checkpoint still to come
            return;
        }
        try {
            writer.seal();
        } catch (Refusal e) {
            notices.accept(e.getMessage());
        }
    }

    /** Returns the journal at a glance. */
    JournalStatus status(List<String> told) {
        writing.lock();
        try {
            Optional<String> readOnly = hold.readOnly()
                    .or(own::failed)
                    .or(() -> Stream.of(refused, held)
                            .filter(why -> !why.isEmpty())
                            .findFirst());
            return own.status(home.folder(), told, readOnly);
        } finally {
            writing.unlock();
        }
    }

    /** Signs what is kept and returns how far the files go that hold it. */
    Cut cut() throws IOException {
        writing.lock();
        try {
            Own.Open open =
                    own.open().orElseThrow(() -> new Refusal("backup.unfounded", Say.words("backup.unfounded")));
            open.writer().ifPresent(StationWriter::seal);
            Station station = open.station();
            Checkpoint over = station.checkpoint()
                    .orElseThrow(() -> new Refusal("backup.unfounded", Say.words("backup.unfounded")));
            return new Cut(station.folder(), Verifier.Bounds.of(station.folder(), Optional.of(station)), over);
        } finally {
            writing.unlock();
        }
    }

    /** Returns how far the files of a station go that hold what is kept of it. */
    Verifier.Bounds bounds(StationFolder folder, Optional<Station> station) throws IOException {
        writing.lock();
        try {
            return Verifier.Bounds.of(folder, station);
        } finally {
            writing.unlock();
        }
    }

    /** Signs what is kept, and returns how far others may see it. */
    Host.Shown seal() {
        writing.lock();
        try {
            sealQuietly();
            Station station = station().orElseThrow();
            return new Host.Shown(
                    station.newest(), station.folder().checkpoints().toFile().length());
        } finally {
            writing.unlock();
        }
    }

    /** Tells whether this home was made from a back-up and nothing was recorded in it since. */
    boolean restored() {
        return restored.isPresent();
    }

    /** Takes back what another folder holds of this station; returns the entries. */
    List<Entry> takeBack(StationFolder there) throws IOException {
        writing.lock();
        try {
            Own.Open open = own.open().orElseThrow();
            // what was recorded here meanwhile has begun a history of its own
            return restored() && open.writer().isPresent()
                    ? OwnTail.take(there, open.station(), open.writer().get())
                    : List.of();
        } finally {
            writing.unlock();
        }
    }

    /** Tells whether nothing is recorded for now. */
    boolean held() {
        return !held.isEmpty();
    }

    /** Records nothing for now; blank when it may again. */
    void hold(String why) {
        held = why;
    }

    /** Records nothing more from now on. */
    void refuse(String why) {
        refused = why;
        notices.accept(why);
    }

    /** Signs what is kept and writes nothing more. */
    void close() throws IOException {
        writing.lock();
        try {
            if (own instanceof Own.Open open && open.writer().isPresent()) {
                StationWriter writer = open.writer().get();
                if (writer.broken().isEmpty()) {
                    sealOrNote(writer);
                }
                writer.close();
            }
        } finally {
            writing.unlock();
        }
    }
}
