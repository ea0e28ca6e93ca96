package wickbench.ledger.services;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.authority.Act;
import wickbench.api.authority.Authority;
import wickbench.api.authority.Signature;
import wickbench.api.home.HomeFolder;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Stations;
import wickbench.api.method.Unit;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.api.report.ReportPrinter;
import wickbench.attachments.AttachmentService;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.ledger.desk.CaseDesk;
import wickbench.ledger.desk.ReleaseDesk;
import wickbench.ledger.desk.ReviewDesk;
import wickbench.ledger.pack.PackDesk;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;
import wickbench.report.pdf.PdfPrinter;
import wickbench.report.sheet.CsvPrinter;
import wickbench.report.sheet.JsonLinesPrinter;
import wickbench.report.sheet.XlsxPrinter;

/** A home on the disk with journal, index, bench and ledger. */
final class TestSite implements AutoCloseable {
    static final PersonId WRITER = new PersonId("op-01");
    /** Far from UTC, so that days of the site and days of UTC differ. */
    static final ZoneId ZONE = ZoneId.of("Pacific/Auckland");

    final HomeFolder home;
    final JournalFolder journal;
    final H2Index index;
    final SiteFacts site;
    final LedgerResults results;
    final CorrectDesk correcting;
    final MethodShelf shelf;
    private final Path folder;
    PapersDesk papers;
    private List<Outcome> order = List.of(Outcome.values());

    TestSite(Path folder, IndexView... views) {
        this.folder = folder;
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("bench-1"), ZONE, OptionalLong.empty()));
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(views));
        site = () -> site(order);
        results = new LedgerResults(index, journal, site);
        shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        correcting = new CorrectDesk(
                Optional.of(new RecordingDoor(
                        home,
                        journal,
                        index,
                        shelf,
                        new Neighbours(List.of(), at -> Optional.empty()),
                        (act, draft, passphrase) -> draft)),
                Optional.of(new SheetDesk(shelf, site)));
    }

    /** Makes a site with ledger and bench that is deleted when closed. */
    static TestSite made() throws IOException {
        return new TestSite(Files.createTempDirectory("wickbench-ledger"), new LedgerView(), new BenchView());
    }

    /** Sets in which order this site tells outcomes. */
    void order(List<Outcome> outcomes) {
        order = outcomes;
    }

    private static Site site(List<Outcome> order) {
        return new Site(Optional.of("Feldmark Mill"), ZONE, List.of(Unit.NG_PER_ML), 7, order);
    }

    Entry record(RecordedReading reading) {
        return journal.append(List.of(recorded(reading))).get(0);
    }

    Draft recorded(RecordedReading reading) {
        return new Draft(
                Draft.randomId(home.chance()),
                WRITER,
                RecordedReading.KIND,
                RecordedReading.VERSION,
                RecordedReadingJson.write(reading));
    }

    Entry correct(UUID corrects, RecordedReading now) {
        CorrectedReading body = new CorrectedReading(corrects, "mistyped", now);
        return journal.append(List.of(new Draft(
                        Draft.randomId(home.chance()),
                        WRITER,
                        CorrectedReading.KIND,
                        CorrectedReading.VERSION,
                        CorrectedReadingJson.write(body))))
                .get(0);
    }

    /** Corrects under the writer's name. */
    Signature correctSigned(UUID corrects, RecordedReading now) {
        Draft draft = new Draft(
                Draft.randomId(home.chance()),
                WRITER,
                CorrectedReading.KIND,
                CorrectedReading.VERSION,
                CorrectedReadingJson.write(new CorrectedReading(corrects, "mistyped", now)));
        Signature name = Signature.of(draft, WRITER, home.clock().instant(), Act.CORRECT_OWN_READING);
        journal.append(List.of(new Draft(
                draft.id(), WRITER, draft.kind(), draft.v(), draft.body().with(Signature.MEMBER, name.json()))));
        return name;
    }

    /** Returns the doors of a house where nobody is enrolled yet, so that everybody may. */
    Doors doors(Optional<OwedWork> owed) {
        Authority everyoneMay = (act, draft, passphrase) -> draft;
        return doors(owed, everyoneMay);
    }

    Doors doors(Optional<OwedWork> owed, Authority authority) {
        Stations stations = journal.others();
        CaseDesk cases = new CaseDesk(journal, index, authority, results, stations, owed);
        ReleaseDesk releases = new ReleaseDesk(home, journal, index, authority, results, site, stations, owed);
        papers = new PapersDesk(results, cases, releases, site, List.of(), printers());
        return new Doors(
                correcting,
                owed.map(work -> new DoubtDecision(work, results, journal)),
                new ReviewDesk(home, journal, results, site, authority),
                cases,
                releases,
                new PackDesk(
                        home,
                        journal,
                        journal.proofs(),
                        results,
                        papers,
                        site,
                        List.of(new AttachmentService(home, journal, index)),
                        List.of(),
                        printers()),
                new TrendDesk(home, journal, index, authority, site));
    }

    private List<ReportPrinter> printers() {
        return List.of(
                new PdfPrinter(home, journal, site), new XlsxPrinter(), new JsonLinesPrinter(), new CsvPrinter());
    }

    @Override
    public void close() {
        index.close();
        journal.close();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
