package wickbench.ledger.ui;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.authority.Authority;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.api.report.ReportPrinter;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
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
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.reading.MethodJson;
import wickbench.report.chart.ScreenPainter;
import wickbench.report.pdf.PdfPrinter;

/** A real home with journal, index, bench and ledger. */
final class TestHouse implements AutoCloseable {
    private static final Path DEMO = Path.of("../../demo");
    private static final PersonId WRITER = new PersonId("op-05");

    private final JournalFolder journal;
    private final H2Index index;
    private final MethodShelf shelf;
    private final RecordingDoor door;
    private final SheetDesk sheets;
    private final Ledger ledger;
    private final ActDoors acts;

    TestHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("bench-1"), ZoneId.of("Europe/Vienna"), OptionalLong.empty()));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new BenchView(), new OwedView(), new PeopleView(), new LedgerView(), new ActsView()));
        shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        PeopleService people = new PeopleService(
                home,
                journal,
                new Roster(home, journal, index),
                (act, draft, passphrase) -> draft,
                new Keeping(home, journal, new Roster(home, journal, index), at -> Optional.empty()));
        people.enrol(WRITER, "Ina Moos", Set.of(Role.OPERATOR, Role.ADMINISTRATOR), WRITER);
        door = new RecordingDoor(
                home,
                journal,
                index,
                shelf,
                new Neighbours(List.of(), at -> Optional.empty()),
                (act, draft, passphrase) -> draft);
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        sheets = new SheetDesk(shelf, site);
        LedgerResults results = new LedgerResults(index, journal, site);
        Authority everyoneMay = (act, draft, passphrase) -> draft;
        Optional<OwedWork> owed = Optional.of(new OwedDesk(journal, index, everyoneMay));
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        CaseDesk cases = new CaseDesk(journal, index, everyoneMay, results, journal.others(), owed);
        ReleaseDesk releases =
                new ReleaseDesk(home, journal, index, everyoneMay, results, site, journal.others(), owed);
        List<ReportPrinter> printers = List.of(new PdfPrinter(home, journal, site));
        PapersDesk papers = new PapersDesk(results, cases, releases, site, List.of(people), printers);
        PackDesk packing =
                new PackDesk(home, journal, journal.proofs(), results, papers, site, List.of(), List.of(), printers);
        ledger = new Ledger(results, journal, site, List.of(people), List.of(new ScreenPainter()), papers, packing);
        acts = new ActDoors(
                new ReviewDesk(home, journal, results, site, everyoneMay),
                new CorrectDesk(Optional.of(door), Optional.of(sheets)),
                cases,
                releases,
                site,
                List.of(people),
                new HouseAuthority(home, roster, signIn, at -> Optional.empty()),
                signIn);
    }

    /** Issues the demonstration's methods and records its run sheet. */
    List<Kept> recordSheet() {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"));
                InputStream sheet = Files.newInputStream(DEMO.resolve("run-sheet.csv"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList()) {
                shelf.issue(
                        MethodJson.read(file.toString(), Files.readString(file)).orRefuse(), WRITER);
            }
            return door.record(sheets.read("run-sheet.csv", sheet).orRefuse(), WRITER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void correct(UUID reading, Reading now, String reason) {
        door.correct(reading, now, reason, WRITER);
    }

    Ledger ledger() {
        return ledger;
    }

    ActDoors acts() {
        return acts;
    }

    JournalFolder journal() {
        return journal;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
