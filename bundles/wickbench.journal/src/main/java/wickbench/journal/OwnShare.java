package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.home.Settings;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Seen;
import wickbench.api.journal.SharedFiles;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Stations;
import wickbench.api.json.Json;

/** The shared folder of one home: sets it, begins the exchange once the station is founded, and ends it. */
final class OwnShare implements Host, Stations {
    private final JournalFolder journal;
    private final Home home;
    private final Supplier<List<SharedFiles>> files;
    private volatile List<Exchange> running = List.of();

    OwnShare(JournalFolder journal, Home home, Supplier<List<SharedFiles>> files) {
        this.journal = journal;
        this.home = home;
        this.files = files;
    }

    /** Returns drafts behind an entry that says what had come in before, if anything had. */
    static List<Draft> after(List<Seen> seen, List<Draft> drafts, Home home) {
        if (seen.isEmpty()) {
            return drafts;
        }
        List<Draft> all = new ArrayList<>();
        all.add(new Draft(Draft.randomId(home.chance()), OwnStation.JOURNAL, Seen.KIND, Seen.VERSION, Seen.body(seen)));
        all.addAll(drafts);
        return all;
    }

    private Optional<Path> folder() {
        return Settings.read(home.folder()).share();
    }

    /** Begins to exchange where a folder is set; a home with a simulated clock never does. */
    void begin() {
        Optional<Path> folder = folder();
        boolean real = journal.writing()
                .station()
                .filter(station -> !station.founded().founding().simulated())
                .isPresent();
        if (folder.isPresent() && real) {
            Exchange exchange = new Exchange(this, folder.get(), home.clock(), Draft.randomId(home.chance()), files);
            running = List.of(exchange);
            exchange.start();
        }
    }

    @Override
    public Sharing sharing() {
        return running.stream().findFirst().map(Exchange::sharing).orElseGet(this::alone);
    }

    private Sharing alone() {
        return new Sharing(folder(), Optional.empty(), 0, List.of(), List.of(), List.of());
    }

    @Override
    public Sharing exchange() {
        return running.stream().findFirst().map(Exchange::pass).orElseGet(this::alone);
    }

    @Override
    public void share(Optional<Path> folder) {
        folder.ifPresent(this::refuseUnfit);
        close();
        hold("");
        new Settings(folder.map(Path::toAbsolutePath)).write(home.folder());
        begin();
    }

    private void refuseUnfit(Path folder) {
        boolean simulated = home.simulatedSeed().isPresent()
                || journal.writing()
                        .station()
                        .filter(station -> station.founded().founding().simulated())
                        .isPresent();
        if (simulated) {
            throw new Refusal("share.simulated", Say.words("share.simulated", home.folder()));
        }
        try {
            if (!Files.isDirectory(folder) || !new ShareFolder(folder).make(journal.disk())) {
                throw new Refusal("share.none", Say.words("share.none", folder));
            }
        } catch (IOException e) {
            throw new Refusal("share.none", Say.words("share.cut-off", folder, EntryFiles.reason(e)));
        }
    }

    /** Exchanges until what the share holds of this station's own is back, or it is known that it will not come. */
    void takeBack() {
        long patience =
                System.nanoTime() + WriterClaim.DEAD.plus(WriterClaim.BEAT).toNanos();
        exchange();
        while (journal.writing().held() && System.nanoTime() < patience) {
            LockSupport.parkNanos(WriterClaim.BEAT.toNanos() / 4);
            exchange();
        }
    }

    /** Refuses to found a station under the name of one that is there already. */
    void refuseTaken(StationId wanted) {
        boolean there = folder().map(ShareFolder::new)
                .filter(ShareFolder::isShare)
                .filter(share -> Files.exists(share.of(wanted).folder()))
                .isPresent();
        if (there || journal.copies().copy(wanted).isPresent()) {
            throw new Refusal("station.taken", Say.words("station.taken", wanted, folder().orElse(home.folder())));
        }
    }

    void close() {
        running.forEach(Exchange::close);
        running = List.of();
    }

    @Override
    public Disk disk() {
        return journal.disk();
    }

    @Override
    public Layout layout() {
        return new Layout(home.folder());
    }

    @Override
    public Copies copies() {
        return journal.copies();
    }

    @Override
    public Station own() {
        return journal.writing().station().orElseThrow();
    }

    @Override
    public Shown seal() {
        return journal.writing().seal();
    }

    @Override
    public Optional<Pin> pinned(StationId station) {
        List<Pin> pins = new ArrayList<>();
        own().read(0, entry -> {
            Pin.of(entry).filter(pin -> pin.station().equals(station)).ifPresent(pins::add);
            return pins.isEmpty();
        });
        return pins.stream().findFirst();
    }

    @Override
    public void record(String kind, int v, Json.Obj body) {
        journal.record(List.of(new Draft(Draft.randomId(home.chance()), OwnStation.JOURNAL, kind, v, body)));
    }

    @Override
    public void tell(List<Entry> entries) {
        journal.came(entries);
    }

    @Override
    public boolean restored() {
        return journal.writing().restored();
    }

    @Override
    public void takeBack(StationFolder there) throws IOException {
        List<Entry> back = journal.writing().takeBack(there);
        if (!back.isEmpty()) {
            journal.notice(Say.words(
                    "own.back", back.size(), there.station(), there.folder().getParent()));
            journal.came(back);
        }
    }

    @Override
    public void hold(String why) {
        journal.writing().hold(why);
    }

    @Override
    public void refuse(String why) {
        journal.writing().refuse(why);
    }
}
