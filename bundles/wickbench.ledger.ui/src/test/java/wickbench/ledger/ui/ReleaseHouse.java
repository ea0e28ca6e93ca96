package wickbench.ledger.ui;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.progress.Progress;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.desk.ActsView;
import wickbench.ledger.desk.CaseDesk;
import wickbench.ledger.desk.ReleaseDesk;
import wickbench.ledger.desk.ReviewDesk;
import wickbench.ledger.pack.PackDesk;
import wickbench.ledger.services.CorrectDesk;
import wickbench.ledger.services.LedgerResults;
import wickbench.ledger.services.LedgerView;
import wickbench.ledger.services.PapersDesk;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.RecoveryView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;
import wickbench.reading.MethodJson;
import wickbench.testing.DatabaseTool;

/** A real home where a releaser and a reviewer have passphrases, and a batch of an invented plant was tested. */
final class ReleaseHouse implements AutoCloseable {
    static final PersonId LEA = new PersonId("lea");
    static final PersonId RUI = new PersonId("rui");
    static final String LEAS = "seven grey herons wade";
    static final String RUIS = "quiet lamps by the river";

    private static final String ONCE = "come in and choose yours";
    private static final Path DEMO = Path.of("../../demo");
    private static final PersonId ADA = new PersonId("ada");
    private static final String HEADER =
            "sample,place,method,route,lot,operator,out_of_fridge,extracted,shaken_s,started,read,seen,batch,line,reason,control\n";

    private final HomeFolder home;
    private final JournalFolder journal;
    private final H2Index index;
    private final RecordingDoor door;
    private final SheetDesk sheets;
    private final ActDoors doors;
    private final Ledger ledger;

    ReleaseHouse(Path folder) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(
                new Founding(new StationId("quality-1"), java.time.ZoneId.of("Europe/Vienna"), OptionalLong.empty()));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(
                        new BenchView(),
                        new OwedView(),
                        new PeopleView(),
                        new RecoveryView(),
                        new LedgerView(),
                        new ActsView()));
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        Keeping keeping = new Keeping(home, journal, roster, at -> Optional.empty());
        PeopleService people = new PeopleService(home, journal, roster, authority, keeping);
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        MethodShelf shelf = new MethodShelf(journal, index, authority);
        door = new RecordingDoor(
                home, journal, index, shelf, new Neighbours(List.of(), at -> Optional.empty()), authority);
        sheets = new SheetDesk(shelf, site);
        LedgerResults results = new LedgerResults(index, journal, site);
        Optional<wickbench.api.owed.OwedWork> owed = Optional.of(new OwedDesk(journal, index, authority));
        doors = new ActDoors(
                new ReviewDesk(home, journal, results, site, authority),
                new CorrectDesk(Optional.of(door), Optional.of(sheets)),
                new CaseDesk(journal, index, authority, results, journal.others(), owed),
                new ReleaseDesk(home, journal, index, authority, results, site, journal.others(), owed),
                site,
                List.of(people),
                authority,
                signIn);
        PapersDesk papers =
                new PapersDesk(results, doors.deciding(), doors.releasing(), site, List.of(people), List.of());
        PackDesk packing =
                new PackDesk(home, journal, journal.proofs(), results, papers, site, List.of(), List.of(), List.of());
        ledger = new Ledger(results, journal, site, List.of(people), List.of(), papers, packing);
        people.enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        people.enrol(LEA, "Lea Vogt", Set.of(Role.RELEASER, Role.ADMINISTRATOR), ADA);
        people.enrol(RUI, "Rui Paz", Set.of(Role.REVIEWER), ADA);
        issue(shelf);
        doors.releasing()
                .plan(
                        new ReleasePlan(
                                "L1",
                                List.of(new Point("L1 mixer outlet", new MethodId("hazelnut-rinse"))),
                                "the food-safety plan"),
                        RUI,
                        Optional.empty());
        HouseCredentials credentials =
                new HouseCredentials(home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster));
        credentials.set(LEA, Optional.empty(), typed(LEAS));
        signIn.open(LEA, typed(LEAS));
        credentials.reset(RUI, typed(ONCE), new Signing(LEA, typed(LEAS)), Optional.empty());
        credentials.set(RUI, Optional.of(typed(ONCE)), typed(RUIS));
        signIn.close(LEA);
    }

    private static void issue(MethodShelf shelf) {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList()) {
                shelf.issue(
                        MethodJson.read(file.toString(), Files.readString(file)).orRefuse(), ADA);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Passphrase typed(String text) {
        return Passphrase.of(text.toCharArray());
    }

    /** Records a control and a strip of batch B-1, at an hour of a day in 2026. */
    Kept tested(String sample, String hour, String seen) {
        String sheet = HEADER
                + row("K" + sample, "bench", hour + ":00", "control hook test", ",,control,low-positive")
                + row(sample, "L1 mixer outlet", hour + ":10", seen, "B-1,L1,changeover,");
        return door.record(
                        sheets.read("morning.csv", new ByteArrayInputStream(sheet.getBytes(StandardCharsets.UTF_8)))
                                .orRefuse(),
                        ADA)
                .get(1);
    }

    /** Records one strip by a method of the demonstration, read half an hour past eight. */
    Kept tested(String sample, String place, String method, String rest) {
        String row = row(sample, place, "08:30", "control hook", rest).replace("hazelnut-rinse", method);
        String sheet = HEADER + (method.startsWith("milk") ? twoLines(row) : row);
        return door.record(
                        sheets.read("noon.csv", new ByteArrayInputStream(sheet.getBytes(StandardCharsets.UTF_8)))
                                .orRefuse(),
                        ADA)
                .get(0);
    }

    /** A strip without a hook line, which takes three minutes longer. */
    private static String twoLines(String row) {
        return row.replace("control hook", "control").replace("08:37:30", "08:40:30");
    }

    private static String row(String sample, String place, String time, String seen, String rest) {
        int minute = Integer.parseInt(time.substring(3));
        String hour = time.substring(0, 2);
        return String.join(
                        ",",
                        sample,
                        place,
                        "hazelnut-rinse,rinse,HZ-261103,op-05",
                        "2026-11-20T05:00:00+01:00",
                        "2026-11-20T" + hour + ":" + two(minute) + ":00+01:00",
                        "75",
                        "2026-11-20T" + hour + ":" + two(minute + 2) + ":00+01:00",
                        "2026-11-20T" + hour + ":" + two(minute + 7) + ":30+01:00",
                        seen,
                        rest)
                + "\n";
    }

    private static String two(int number) {
        return String.format("%02d", number);
    }

    ActDoors doors() {
        return doors;
    }

    Ledger ledger() {
        return ledger;
    }

    JournalFolder journal() {
        return journal;
    }

    /** Somebody changes the index behind the program. */
    void behindOurBack(String sql) throws IOException, SQLException {
        index.catchUp(Progress.NONE);
        index.close();
        DatabaseTool.change(home.folder(), sql);
    }

    void rebuild() {
        index.rebuild(Progress.NONE);
    }

    HomeFolder home() {
        return home;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
