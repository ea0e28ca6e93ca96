package wickbench.journal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
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
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.JournalStatus;
import wickbench.api.journal.Proofs;
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
    private final OwnWriting writing;
    private final OwnShare share;
    private final List<String> notices = new CopyOnWriteArrayList<>();
    private final Proving proving;
    private final QuietSeal quiet;

    private JournalFolder(
            Home home, Disk disk, HomeHold hold, Consumer<List<Entry>> listener, Supplier<List<SharedFiles>> files)
            throws IOException {
        this.home = home;
        this.listener = listener;
        this.hold = hold;
        this.disk = disk;
        notices.addAll(hold.notices());
        copies = Copies.open(disk, new Layout(home.folder()), notices::add);
        writing = new OwnWriting(home, disk, hold, copies, notices::add);
        quiet = new QuietSeal(writing::sealQuietly);
        proving = new Proving(new Layout(home.folder()), hold.readOnly().isEmpty(), this::of, writing::sealQuietly);
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
        return writing.own().open().map(open -> open.station().founded().founding());
    }

    @Override
    public Founding found(Founding wanted) {
        List<Entry> news = new ArrayList<>();
        writing.found(wanted, share, news);
        tell(news);
        return founding().orElseThrow();
    }

    @Override
    public List<Entry> append(List<Draft> drafts) {
        if (writing.restored()) {
            // what came after the back-up may be in the shared folder; what is recorded before it is back begins a
            // second history
            share.takeBack();
        }
        return record(drafts);
    }

    /** Appends at once, as the exchange with other stations itself does. */
    List<Entry> record(List<Draft> drafts) {
        List<Entry> news = new ArrayList<>();
        List<Entry> entries = drafts.isEmpty() ? List.of() : writing.append(drafts, share, news);
        tell(news);
        return entries;
    }

    @Override
    public List<StationId> stations() {
        Stream<StationId> here =
                writing.own().open().map(open -> open.station().folder().station()).stream();
        return Stream.concat(here, copies.stations().stream()).toList();
    }

    @Override
    public long size(StationId station) {
        return of(station).map(found -> found.kept().size()).orElse(0L);
    }

    private void tell(List<Entry> news) {
        if (!news.isEmpty()) {
            if (home.simulatedSeed().isEmpty()) {
                quiet.touched();
            }
            came(news);
        }
    }

    /** Tells people something. */
    void notice(String text) {
        notices.add(text);
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
        return writing.own()
                .open()
                .map(Own.Open::station)
                .filter(found -> found.folder().station().equals(station))
                .or(() -> copies.station(station));
    }

    @Override
    public Optional<Checkpoint> checkpoint() {
        return writing.checkpoint();
    }

    @Override
    public Optional<Checkpoint> checkpoint(StationId station) {
        return copies.station(station).map(Station::checkpoint).orElseGet(() -> Journal.super.checkpoint(station));
    }

    @Override
    public Optional<Hash> keyFingerprint(StationId station) {
        return of(station)
                .map(found -> new Hash(found.founded().key().fingerprint().hex()));
    }

    @Override
    public JournalStatus status() {
        return writing.status(notices);
    }

    /** Signs what is kept and returns how far the files go that hold it. */
    Cut cut() throws IOException {
        return writing.cut();
    }

    /** Returns what proves the entries of this home, for as long as it is open. */
    public Proofs proofs() {
        return proving;
    }

    @Override
    public Verification verify(Progress progress) {
        try {
            return new HomeVerifier(new Layout(home.folder()), copies, writing::bounds).run(writing.own(), progress);
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.read", home.folder(), EntryFiles.reason(e)));
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

    OwnWriting writing() {
        return writing;
    }

    /** Signs what is kept, shows it to the other stations and lets go of the home. */
    @Override
    public void close() {
        quiet.close();
        share.close();
        try {
            writing.close();
            proving.close();
            copies.close();
            hold.close();
        } catch (IOException e) {
            throw Say.failed(Say.words("failed.close", home.folder(), EntryFiles.reason(e)));
        }
    }
}
