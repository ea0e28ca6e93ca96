package wickbench.index;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.ReentrantLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.clash.Clash;
import wickbench.api.index.Index;
import wickbench.api.index.IndexVerification;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.index.ViewState;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Sighting;
import wickbench.api.progress.Progress;
import wickbench.index.SqlFailure.Damaged;

/**
 * The index in an H2 file, opened at first use.
 *
 * <p>A file that cannot be read is thrown away and made again from the journal, and {@link #notices} tells so. A view that cannot
 * take an entry keeps what it took before, and reading it is refused ({@code index.behind}) until it can. Safe for use by several
 * threads; one takes in at a time, and any number read.
 */
public final class H2Index implements Index, AutoCloseable {
    private final Place place;
    private final Journal journal;
    private final Supplier<List<IndexView>> views;
    private final IndexView entryIds = new EntryIds();
    private final List<String> notices = new CopyOnWriteArrayList<>();
    /** Held by whoever changes tables; taken before {@link #standing}, never while holding it. */
    private final ReentrantLock changing = new ReentrantLock();
    /** Held shared while tables are read, alone while the file is replaced. */
    private final ReentrantReadWriteLock standing = new ReentrantReadWriteLock();

    private volatile Optional<House> house = Optional.empty();
    private volatile Optional<Assured> assured = Optional.empty();
    private volatile Optional<Thread> refused = Optional.empty();

    private H2Index(Path folder, Journal journal, Supplier<List<IndexView>> views) {
        place = new Place(folder);
        this.journal = journal;
        this.views = views;
    }

    /**
     * Names an index; nothing is opened yet.
     *
     * @param folder where its files are kept; made when needed
     * @param views asked anew at each use, so that views may come and go
     */
    public static H2Index open(Path folder, Journal journal, Supplier<List<IndexView>> views) {
        return new H2Index(folder, journal, views);
    }

    @Override
    public <T> T read(String view, Function<Rows, T> work) {
        refuseHere();
        if (standing.getReadHoldCount() > 0) {
            // within a read: what was caught up for that one is new enough
            return house.orElseThrow().tables(view).read(work);
        }
        return mending(() -> readUpToDate(view, work));
    }

    @Override
    public Optional<EntryRef> find(UUID id) {
        return read(EntryIds.NAME, rows -> EntryIds.find(rows, id));
    }

    @Override
    public List<Clash> clashes() {
        return read(EntryIds.NAME, Sight::clashes);
    }

    @Override
    public Optional<Clash> clash(String subject) {
        return read(EntryIds.NAME, rows -> Sight.clash(subject, rows));
    }

    @Override
    public List<Sighting> sightings() {
        return read(EntryIds.NAME, Sight::sightings);
    }

    @Override
    public void catchUp(Progress progress) {
        refuseHere();
        mending(() -> changing(() -> {
            House open = furnished();
            open.all().forEach(ViewTables::forgive);
            open.catchUp(progress);
            return open;
        }));
    }

    @Override
    public void rebuild(Progress progress) {
        refuseHere();
        changing(() -> {
            journal.stations();
            throwAway();
            return whole(() -> {
                House open = furnished();
                open.catchUp(progress);
                return open;
            });
        });
    }

    @Override
    public IndexVerification verify(Progress progress) {
        refuseHere();
        return mending(() -> {
            changing(this::furnished);
            try (Scratch scratch = new Scratch(folder().resolve(Scratch.FOLDER), journal, current())) {
                if (!scratch.catchUp(progress)) {
                    return new IndexVerification(List.of(), false);
                }
                return changing(() -> {
                    House open = furnished();
                    open.catchUp(Progress.NONE);
                    return new IndexVerification(scratch.compare(open), true);
                });
            }
        });
    }

    /** What was found to hold: the tables of these views, since they were opened. */
    private record Assured(House house, Set<String> views) {}

    @Override
    public IndexVerification assured(Progress progress) {
        refuseHere();
        Assured now = mending(() -> changing(this::standing));
        if (assured.filter(now::equals).isPresent()) {
            return new IndexVerification(List.of(), true);
        }
        IndexVerification found = verify(progress);
        if (found.holds()) {
            assured = Optional.of(now);
        }
        return found;
    }

    private Assured standing() {
        return new Assured(
                furnished(), current().stream().map(IndexView::name).collect(Collectors.toUnmodifiableSet()));
    }

    private List<IndexView> current() {
        return Stream.concat(Stream.of(entryIds), views.get().stream()).toList();
    }

    @Override
    public List<ViewState> views() {
        refuseHere();
        return mending(() -> changing(() -> furnished().states()));
    }

    @Override
    public List<String> notices() {
        return List.copyOf(notices);
    }

    @Override
    public void refuseOn(Thread thread) {
        refused = Optional.of(thread);
    }

    @Override
    public void close() {
        changing(() -> alone(() -> {
            house.ifPresent(House::close);
            house = Optional.empty();
            place.leave();
            return house;
        }));
    }

    private Path folder() {
        return place.folder(notices::add);
    }

    private <T> T readUpToDate(String view, Function<Rows, T> work) {
        ViewTables tables;
        changing.lock();
        try {
            tables = upToDate(view);
            standing.readLock().lock();
        } finally {
            changing.unlock();
        }
        try {
            return tables.read(work);
        } finally {
            standing.readLock().unlock();
        }
    }

    private ViewTables upToDate(String view) {
        House open = furnished();
        ViewTables tables = open.tables(view);
        tables.forgive();
        open.catchUp(Progress.NONE);
        tables.refuseIfBehind(open.total());
        return tables;
    }

    private House furnished() {
        // the journal first: it refuses when another program holds the home, before a file of ours is touched
        journal.stations();
        House open = house.orElseGet(() -> {
            House opened = new House(H2File.open(folder(), notices::add), journal);
            house = Optional.of(opened);
            return opened;
        });
        open.furnish(current());
        return open;
    }

    /** Does the work; when the file turns out to be broken, makes it again and does the work once more. */
    private <T> T mending(Supplier<T> work) {
        try {
            return work.get();
        } catch (Damaged e) {
            changing(() -> {
                notices.add(H2File.damaged(e));
                throwAway();
                return house;
            });
            return whole(work);
        }
    }

    /** Does the work on a file that was made anew; one that breaks too cannot be written, as on a full disk, and is left to the next time. */
    private <T> T whole(Supplier<T> work) {
        try {
            return work.get();
        } catch (Damaged e) {
            changing(() -> {
                throwAway();
                return house;
            });
            throw H2File.unwritten(folder(), e);
        }
    }

    private void throwAway() {
        alone(() -> {
            house.ifPresent(House::abandon);
            house = Optional.empty();
            H2File.delete(folder());
            return house;
        });
    }

    private <T> T changing(Supplier<T> work) {
        changing.lock();
        try {
            return work.get();
        } finally {
            changing.unlock();
        }
    }

    private <T> T alone(Supplier<T> work) {
        standing.writeLock().lock();
        try {
            return work.get();
        } finally {
            standing.writeLock().unlock();
        }
    }

    private void refuseHere() {
        if (refused.filter(thread -> thread == Thread.currentThread()).isPresent()) {
            throw new IllegalStateException("the index was asked on a thread that must not wait for a disk");
        }
    }
}
