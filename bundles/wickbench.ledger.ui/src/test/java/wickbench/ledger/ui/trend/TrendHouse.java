package wickbench.ledger.ui.trend;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.ledger.desk.ActsView;
import wickbench.ledger.services.LedgerView;
import wickbench.ledger.services.TrendDesk;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;
import wickbench.reading.MethodJson;
import wickbench.report.chart.ScreenPainter;

/** A real home with a reviewer and ten weeks of first tests after a clean on two points of an invented line. */
final class TrendHouse implements AutoCloseable {
    static final PersonId RUI = new PersonId("rui");
    static final String RUIS = "quiet lamps by the river";
    static final LocalDate MONDAY = LocalDate.of(2026, 1, 5);

    private static final String HEADER =
            "sample,place,method,route,lot,operator,out_of_fridge,extracted,shaken_s,started,read,seen,batch,line,reason\n";

    private final JournalFolder journal;
    private final H2Index index;
    private final TrendDoors doors;

    TrendHouse(Path folder, int... positives) throws IOException {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("quality-1"), ZoneId.of("Europe/Vienna"), OptionalLong.empty()));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new BenchView(), new PeopleView(), new LedgerView(), new ActsView()));
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        Keeping keeping = new Keeping(home, journal, roster, at -> Optional.empty());
        PeopleService people = new PeopleService(home, journal, roster, authority, keeping);
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        people.enrol(RUI, "Rui Paz", Set.of(Role.REVIEWER, Role.ADMINISTRATOR), RUI);
        MethodShelf shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        Path method = Path.of("../../demo/methods/hazelnut-rinse.json");
        shelf.issue(MethodJson.read("method", Files.readString(method)).orRefuse(), RUI);
        RecordingDoor door = new RecordingDoor(
                home,
                journal,
                index,
                shelf,
                new Neighbours(List.of(), at -> Optional.empty()),
                (act, draft, passphrase) -> draft);
        byte[] sheet = sheet(positives).getBytes(StandardCharsets.UTF_8);
        door.record(
                new SheetDesk(shelf, site)
                        .read("weeks.csv", new ByteArrayInputStream(sheet))
                        .orRefuse(),
                RUI);
        new HouseCredentials(home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster))
                .set(RUI, Optional.empty(), Passphrase.of(RUIS.toCharArray()));
        doors = new TrendDoors(
                new TrendDesk(home, journal, index, authority, site),
                site,
                List.of(people),
                authority,
                signIn,
                Optional.of(new ScreenPainter()));
    }

    /** Four strips a week, two at each point; so many of them Positive. */
    private static String sheet(int... positives) {
        StringBuilder rows = new StringBuilder(HEADER);
        for (int week = 0; week < positives.length; week++) {
            for (int strip = 0; strip < 4; strip++) {
                String day = MONDAY.plusWeeks(week) + "T0" + (6 + strip);
                rows.append(String.join(
                                ",",
                                "S-" + week + "-" + strip,
                                strip % 2 == 0 ? "L1 mixer blade" : "L1 belt underside",
                                "hazelnut-rinse,rinse,HZ-1,op-05",
                                MONDAY.plusWeeks(week) + "T05:00:00+01:00",
                                day + ":10:00+01:00",
                                "75",
                                day + ":12:00+01:00",
                                day + ":17:30+01:00",
                                strip < positives[week] ? "control hook test" : "control hook",
                                "B-" + week + "-" + strip,
                                "L1",
                                "changeover"))
                        .append('\n');
            }
        }
        return rows.toString();
    }

    TrendDoors doors() {
        return doors;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
