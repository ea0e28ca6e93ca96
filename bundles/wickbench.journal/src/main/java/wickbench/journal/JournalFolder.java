package wickbench.journal;

import java.io.IOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.Seen;
import wickbench.api.journal.SharedFiles;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Stations;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/**
 * The journal in the folder of a home, for a program with or without a framework.
 *
 * <p>Holds the home from {@link #open} to {@link #close}. One thread appends at a time; readers wait for nobody and see what
 * is acknowledged only. In a simulated home no checkpoint hangs on the time of day, so that equal seeds give equal bytes.
 */
public final class JournalFolder implements Journal, AutoCloseable {
    private final Home home;
    private final Consumer<List<Entry>> listener;
    private final HomeHold hold;
    private final Disk disk;
    private final Copies copies;
    private final OwnShare share;
    private final OwnStation stations;
    private final List<String> notices = new CopyOnWriteArrayList<>();
    private final ClockWatch clock = new ClockWatch();
    private final ReentrantLock writing = new ReentrantLock();
    private final Proving proving;
    private final QuietSeal quiet = new QuietSeal(this::sealQuietly);
    private volatile Own own;
    /** That this home was made from a back-up, until that is recorded; touched by whoever may write. */
    private Optional<RestoredMark> restored;
    /** Why this station may record nothing more, though its files could be written; blank while it may. */
    private volatile String refused = "";

    private JournalFolder(
            Home home, Disk disk, HomeHold hold, Consumer<List<Entry>> listener, Supplier<List<SharedFiles>> files)
            throws IOException {
        this.home = home;
        this.listener = listener;
        this.hold = hold;
        notices.addAll(hold.notices());
        stations = new OwnStation(disk, home, hold.readOnly().isEmpty(), notices::add);
        own = stations.open();
        restored = RestoredMark.read(home.folder());
        restored.map(RestoredMark::notice).ifPresent(notices::add);
        proving = new Proving(new Layout(home.folder()), hold.readOnly().isEmpty(), this::of, this::sealQuietly);
        this.disk = disk;
        copies = Copies.open(disk, new Layout(home.folder()), notices::add);
        share = new OwnShare(this, home, files);
        share.begin();
    }

    /**
     * Takes the home and opens its journal; one that was tampered with opens for {@link #verify} only.
     *
     * @param listener hears of new entries, as {@link wickbench.api.journal.JournalListener} says
     * @throws Refusal {@code home.held} when a program holds the home already, {@code journal.failed} when the disk failed
     */
    public static JournalFolder open(Home home, Consumer<List<Entry>> listener) {
        return open(home, listener, List::of);
    }

    /**
     * Does the same for a home that exchanges files beside the journal with other stations.
     *
     * @param files asked at each exchange
     */
    public static JournalFolder open(Home home, Consumer<List<Entry>> listener, Supplier<List<SharedFiles>> files) {
        return open(home, new RealDisk(), listener, files);
    }

    static JournalFolder open(Home home, Disk disk, Consumer<List<Entry>> listener) {
        return open(home, disk, listener, List::of);
    }

    private static JournalFolder open(
            Home home, Disk disk, Consumer<List<Entry>> listener, Supplier<List<SharedFiles>> files) {
        try {
            HomeHold hold = HomeHold.take(disk, new Layout(home.folder()));
            try {
                return new JournalFolder(home, disk, hold, listener, files);
            } catch (IOException | RuntimeException | Error e) {
                // else the next try in this program would find the home held by itself
                hold.close();
                throw e;
            }
        } catch (IOException | OutOfMemoryError e) {
            throw Say.failed(Say.words("failed.open", home.folder(), EntryFiles.reason(e)));
        }
    }

    @Override
    public Optional<Founding> founding() {
        return own.open().map(open -> open.station().founded().founding());
    }

    @Override
    public Founding found(Founding wanted) {
        List<Entry> news = new ArrayList<>();
        writing.lock();
        try {
            if (own.open().isPresent()) {
                throw new Refusal("journal.founded", Say.words("founded", home.folder()));
            }
            found(wanted, news);
        } finally {
            writing.unlock();
        }
        tell(news);
        return founding().orElseThrow();
    }

    @Override
    public List<StationId> stations() {
        Stream<StationId> here = own.open().map(open -> open.station().folder().station()).stream();
        return Stream.concat(here, copies.stations().stream()).toList();
    }

    @Override
    public long size(StationId station) {
        return of(station).map(found -> found.kept().size()).orElse(0L);
    }

    @Override
    public List<Entry> append(List<Draft> drafts) {
        List<Entry> news = new ArrayList<>();
        List<Entry> entries = drafts.isEmpty() ? List.of() : append(drafts, news);
        tell(news);
        return entries;
    }

    private List<Entry> append(List<Draft> drafts, List<Entry> news) {
        writing.lock();
        try {
            StationWriter writer = writer(news);
            recordRestored(writer, news);
            List<Seen> seen = copies.untold();
            List<Entry> written = writer.append(
                    OwnShare.after(seen, drafts, home), home.clock().instant());
            news.addAll(written);
            clock.look(written).ifPresent(notices::add);
            copies.tell(seen, notices::add);
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
            mark.remove(home.folder(), notices::add);
        });
        restored = Optional.empty();
    }

    /** Returns who writes; founds the station first when it has no entry yet. */
    private StationWriter writer(List<Entry> news) {
        if (own.open().isEmpty()) {
            found(Founding.defaults(ZoneId.systemDefault()), news);
        }
        if (!refused.isEmpty()) {
            throw Say.failed(refused);
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

    private void found(Founding wanted, List<Entry> news) {
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

    private void tell(List<Entry> news) {
        if (!news.isEmpty()) {
            if (home.simulatedSeed().isEmpty()) {
                quiet.touched();
            }
            came(news);
        }
    }

    /** Tells the listener, whose failure cannot undo what is on the disk. */
    void came(List<Entry> news) {
        try {
            listener.accept(List.copyOf(news));
        } catch (RuntimeException e) {
            notices.add(Say.words("listener", news.get(0).ref(), e));
        }
    }

    @Override
    public void read(StationId station, long from, Predicate<Entry> reader) {
        of(station).ifPresent(found -> found.read(from, reader));
    }

    @Override
    public Optional<Entry> entry(EntryRef ref) {
        return of(ref.station()).flatMap(found -> found.reading().entry(found.kept(), ref.seq()));
    }

    @Override
    public Optional<String> line(EntryRef ref) {
        return of(ref.station()).flatMap(found -> found.reading().line(found.kept(), ref.seq()));
    }

    private Optional<Station> of(StationId station) {
        return own.open()
                .map(Own.Open::station)
                .filter(found -> found.folder().station().equals(station))
                .or(() -> copies.station(station));
    }

    @Override
    public Optional<Checkpoint> checkpoint() {
        writing.lock();
        try {
            own.open().flatMap(Own.Open::writer).ifPresent(StationWriter::seal);
            return own.open().flatMap(open -> open.station().checkpoint());
        } finally {
            writing.unlock();
        }
    }

    @Override
    public Optional<Checkpoint> checkpoint(StationId station) {
        return copies.station(station).map(Station::checkpoint).orElseGet(() -> Journal.super.checkpoint(station));
    }

    private void sealQuietly() {
        writing.lock();
        try {
            own.open().flatMap(Own.Open::writer).ifPresent(this::sealOrNote);
        } finally {
            writing.unlock();
        }
    }

    /** Signs what is kept; a checkpoint that cannot be written takes nothing back of what was acknowledged. */
    private void sealOrNote(StationWriter writer) {
        try {
            writer.seal();
        } catch (Refusal e) {
            notices.add(e.getMessage());
        }
    }

    @Override
    public JournalStatus status() {
        writing.lock();
        try {
            Optional<String> readOnly = hold.readOnly()
                    .or(own::failed)
                    .or(() -> Optional.of(refused).filter(why -> !why.isEmpty()));
            return own.status(home.folder(), notices, readOnly);
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

    /** Returns what proves the entries of this home, for as long as it is open. */
    public Proofs proofs() {
        return proving;
    }

    @Override
    public Verification verify(Progress progress) {
        try {
            return new HomeVerifier(new Layout(home.folder()), copies, this::bounds).run(own, progress);
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.read", home.folder(), EntryFiles.reason(e)));
        }
    }

    private Verifier.Bounds bounds(StationFolder folder, Optional<Station> station) throws IOException {
        writing.lock();
        try {
            return Verifier.Bounds.of(folder, station);
        } finally {
            writing.unlock();
        }
    }

    /** Returns the other stations that this home exchanges journals with. */
    public Stations others() {
        return share;
    }

    Disk disk() {
        return disk;
    }

    Copies copies() {
        return copies;
    }

    /** Returns this station, once it is founded and unless it contradicts its seal. */
    Optional<Station> station() {
        return own instanceof Own.Open open ? Optional.of(open.station()) : Optional.empty();
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

    void refuse(String why) {
        refused = why;
        notices.add(why);
    }

    /** Signs what is kept, shows it to the other stations and lets go of the home. */
    @Override
    public void close() {
        quiet.close();
        share.close();
        writing.lock();
        try {
            if (own instanceof Own.Open open && open.writer().isPresent()) {
                StationWriter writer = open.writer().get();
                if (writer.broken().isEmpty()) {
                    sealOrNote(writer);
                }
                writer.close();
            }
            proving.close();
            copies.close();
            hold.close();
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.close", home.folder(), EntryFiles.reason(e)));
        } finally {
            writing.unlock();
        }
    }
}
