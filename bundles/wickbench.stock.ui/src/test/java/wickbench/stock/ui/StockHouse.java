package wickbench.stock.ui;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.lot.LotId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseSignIn;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;
import wickbench.report.chart.ScreenPainter;
import wickbench.report.pdf.PdfPrinter;
import wickbench.stations.ClashDesk;
import wickbench.stock.Delivery;
import wickbench.stock.Fridge;
import wickbench.stock.Lot;
import wickbench.stock.face.HousePapers;
import wickbench.stock.room.FridgeService;
import wickbench.stock.room.Keeping;
import wickbench.stock.room.Pen;
import wickbench.stock.room.Room;
import wickbench.stock.room.Shelves;
import wickbench.stock.room.StockView;

/** A real home with people, roles and passphrases, in which only a stock room is installed; its clock stands still. */
final class StockHouse implements AutoCloseable {
    static final PersonId KEEPER = new PersonId("keeper");
    static final PersonId OPERATOR = new PersonId("op-01");
    static final PersonId LEAD = new PersonId("lead");
    static final String KEEPERS = "seven grey herons wade";
    static final String LEADS = "nine small boats ashore";
    static final Instant START = Instant.parse("2026-07-20T08:00:00Z");
    static final Path DEMO = Path.of("..", "..", "demo");
    static final String GTIN = "09520123451011";

    private final HomeFolder home;
    private final JournalFolder journal;
    private final H2Index index;
    private final HouseSignIn signIn;
    private final Optional<SimulatedClock> clock;
    private final StockDoors doors;

    StockHouse(Path folder) {
        this(folder, true);
    }

    /** @param still whether its clock stands still; a home whose clock does shares nothing with others */
    StockHouse(Path folder, boolean still) {
        home = new HomeFolder(folder);
        clock = still ? Optional.of(home.simulate(1, START)) : Optional.empty();
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(new StockView(), new PeopleView()));
        Roster roster = new Roster(home, journal, index);
        signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        wickbench.people.Keeping keeping = new wickbench.people.Keeping(home, journal, roster, at -> Optional.empty());
        PeopleService people = new PeopleService(home, journal, roster, authority, keeping);
        HouseCredentials credentials = new HouseCredentials(
                home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster));
        people.enrol(KEEPER, "Marit Kolbenau", Set.of(Role.ADMINISTRATOR, Role.STOCK_KEEPER), KEEPER);
        credentials.set(KEEPER, Optional.empty(), typed(KEEPERS));
        signIn.open(KEEPER, typed(KEEPERS));
        people.enrol(OPERATOR, "Runa Feldmark", Set.of(Role.OPERATOR), KEEPER);
        people.enrol(LEAD, "Wenke Thalbach", Set.of(Role.REVIEWER), KEEPER);
        credentials.reset(
                LEAD, typed("come in and choose yours"), new Signing(KEEPER, typed(KEEPERS)), Optional.empty());
        credentials.set(LEAD, Optional.of(typed("come in and choose yours")), typed(LEADS));
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        Shelves shelves = new Shelves(home, index, site, at -> Optional.empty());
        Pen pen = new Pen(home, journal, authority, site);
        Room room = new Room(shelves, journal);
        FridgeService fridges = new FridgeService(shelves, pen, index, Optional.empty());
        doors = new StockDoors(
                room,
                new Keeping(shelves, pen),
                fridges,
                new HousePapers(room, fridges, List.of(new PdfPrinter(home, journal, site))),
                home.clock(),
                people,
                authority,
                signIn,
                new ClashDesk(home, journal, index, authority),
                List.of(new ScreenPainter()));
    }

    static Passphrase typed(String text) {
        return Passphrase.of(text.toCharArray());
    }

    JournalFolder journal() {
        return journal;
    }

    Home home() {
        return home;
    }

    StockDoors doors() {
        return doors;
    }

    Actor keeper() {
        return Actor.of(KEEPER);
    }

    /** Defines the demonstration's hazelnut kit and registers its fridge. */
    StockHouse furnished() {
        doors.keeping().define(doors.papers().kit(DEMO.resolve("kits/hazelnut.json")), keeper());
        doors.fridges()
                .register(
                        new Fridge(
                                "F1",
                                "Laboratory fridge",
                                new BigDecimal("3"),
                                new BigDecimal("9"),
                                Optional.of("LG-1"),
                                Optional.empty(),
                                List.of()),
                        keeper());
        return this;
    }

    /** Takes two boxes of a lot in, at a time. */
    Lot receive(String lot, String expiry, Instant at) {
        return doors.keeping()
                .receive(
                        new Delivery(
                                "Hazelnut demonstration kit, three lines",
                                new LotId(lot),
                                LocalDate.parse(expiry),
                                2,
                                at,
                                Optional.of("3"),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of("F1"),
                                List.of(),
                                Optional.empty()),
                        keeper());
    }

    Lot lot(String lot) {
        return doors.room().lot(new LotId(lot), home.clock().instant()).orElseThrow();
    }

    void after(Duration time) {
        SimulatedClock still = clock.orElseThrow();
        still.moveTo(still.instant().plus(time));
    }

    /** Lets somebody leave the desk. */
    void leaves(PersonId who) {
        signIn.close(who);
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
