package wickbench.stock.room;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.JsonReader;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.attachments.AttachmentService;
import wickbench.attachments.AttachmentView;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.reading.MethodJson;
import wickbench.stock.Delivery;
import wickbench.stock.Fridge;
import wickbench.stock.Kit;
import wickbench.stock.Lot;

/** A stock room with a bench beside it, a journal, an index and a clock that stands still. */
public final class StockHome implements AutoCloseable {
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    public static final Actor KEEPER = Actor.of(new PersonId("keeper"));
    public static final String KIT = "Hazelnut demonstration kit, three lines";
    public static final LotId LOT = new LotId("HZ-1");

    private static final Authority EVERYONE_MAY = (act, draft, passphrase) -> draft;
    private static final Path DEMO = Path.of("..", "..", "demo");

    public final HomeFolder home;
    public final SimulatedClock clock;
    public final JournalFolder journal;
    public final H2Index index;
    public final Shelves shelves;
    public final Room room;
    public final Keeping keeping;
    public final AttachmentService attachments;
    public final FridgeService fridges;
    public final StockGate gate;
    public final RecordingDoor door;
    public final MethodShelf methods;
    public final OwedDesk owed;
    private int samples;
    private Optional<Profile> profile = Optional.empty();

    public StockHome(Path folder) {
        home = new HomeFolder(folder);
        clock = home.simulate(1, START);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("stock-1"), ZONE, OptionalLong.of(1)));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new StockView(), new BenchView(), new OwedView(), new AttachmentView()));
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        shelves = new Shelves(home, index, site, at -> profile);
        Pen pen = new Pen(home, journal, EVERYONE_MAY, site);
        room = new Room(shelves, journal);
        keeping = new Keeping(shelves, pen);
        attachments = new AttachmentService(home, journal, index);
        fridges = new FridgeService(shelves, pen, index, Optional.of(attachments));
        gate = new StockGate(shelves, at -> profile);
        owed = new OwedDesk(journal, index, EVERYONE_MAY);
        methods = new MethodShelf(journal, index, EVERYONE_MAY);
        door = new RecordingDoor(
                home, journal, index, methods, new Neighbours(List.of(gate), at -> profile), EVERYONE_MAY);
    }

    /** With a kit of 5 strips a pouch and 4 pouches a box, a method for it, and a fridge. */
    public StockHome furnished() {
        keeping.define(kit(), KEEPER);
        methods.issue(method(), KEEPER.who());
        fridges.register(
                new Fridge(
                        "F1",
                        "Lab fridge",
                        new BigDecimal("2"),
                        new BigDecimal("8"),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()),
                KEEPER);
        return this;
    }

    public static Kit kit() {
        try {
            String text = Files.readString(Path.of("src/test/resources/wickbench/stock/kit.json"));
            return JsonReader.readObject("kit.json", text)
                    .then(object -> KitJson.read("kit.json", object))
                    .orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Method method() {
        return method(1, "3");
    }

    /** Returns a version that is written by a revision of the insert. */
    public static Method method(int version, String revision) {
        try {
            String name = "hazelnut-swab-dry.json";
            String text = Files.readString(DEMO.resolve("methods").resolve(name))
                    .replace("\"version\": 1", "\"version\": " + version)
                    .replace("\"insert_revision\": \"3\"", "\"insert_revision\": \"" + revision + "\"");
            return MethodJson.read(name, text).orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** From now on the site's profile waives the checks of these kits, and wants these kinds of entry signed. */
    public StockHome waiving(Set<String> kits, Set<String> signed) {
        profile = Optional.of(new Profile(
                "Feldmark Mill",
                ZONE,
                List.of(),
                Set.of(),
                signed,
                BigDecimal.ZERO,
                7,
                List.of(Outcome.values()),
                Profile.LEAST_RETENTION_YEARS,
                Optional.empty(),
                ControlRule.NONE,
                kits));
        return this;
    }

    /** Lets time pass. */
    public StockHome after(Duration time) {
        clock.moveTo(clock.instant().plus(time));
        return this;
    }

    public Delivery delivery(LotId lot, String expiry, int boxes) {
        return new Delivery(
                KIT,
                lot,
                LocalDate.parse(expiry),
                boxes,
                clock.instant(),
                Optional.of("3"),
                Optional.empty(),
                Optional.empty(),
                Optional.of("F1"),
                List.of(),
                Optional.empty());
    }

    public Lot receive(LotId lot, String expiry, int boxes) {
        return keeping.receive(delivery(lot, expiry, boxes), KEEPER);
    }

    /** Receives a lot and reads the strips that its check asks for, all of them right. */
    public Lot fit(LotId lot, String expiry, int boxes) {
        receive(lot, expiry, boxes);
        after(Duration.ofMinutes(20)).check(lot, true, true);
        keeping.check(lot, KEEPER);
        return lot(lot);
    }

    /** Reads two blanks and two low positives of a lot. */
    public void check(LotId lot, boolean blanksRight, boolean lowsRight) {
        for (int i = 0; i < 2; i++) {
            record(lot, !blanksRight, Reason.LOT_CHECK, Optional.of(RunControl.BLANK));
            record(lot, lowsRight, Reason.LOT_CHECK, Optional.of(RunControl.LOW_POSITIVE));
        }
    }

    /** Reads a sample with a strip that shows nothing. */
    public Kept read(LotId lot) {
        return record(lot, false, Reason.AFTER_CLEANING, Optional.empty());
    }

    public Kept record(LotId lot, boolean positive, Reason reason, Optional<RunControl> control) {
        return record(reading(lot, positive, reason, control));
    }

    public Kept record(Reading reading) {
        return door.record(List.of(reading), KEEPER.who()).get(0);
    }

    public Reading reading(LotId lot, boolean positive, Reason reason, Optional<RunControl> control) {
        Instant read = clock.instant();
        Method method = method();
        Instant started = read.minus(method.timing().develop());
        return new Reading(
                new Sample(
                        "S" + samples++,
                        "Line 1 hopper",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(reason),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        control),
                method.ref().id(),
                method.route(),
                lot,
                new PersonId("op-01"),
                Optional.empty(),
                new Times(
                        Optional.of(started.minus(Duration.ofHours(1))),
                        Optional.of(started.minusSeconds(60)),
                        Optional.of(Duration.ofSeconds(120)),
                        Optional.of(started),
                        Optional.of(read)),
                new Strip(
                        method.format(),
                        Map.of(
                                LineRole.CONTROL, Seen.SEEN,
                                LineRole.HOOK, Seen.SEEN,
                                LineRole.TEST, positive ? Seen.SEEN : Seen.NOT_SEEN)),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
    }

    public Lot lot(LotId lot) {
        return room.lot(lot, clock.instant()).orElseThrow();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
