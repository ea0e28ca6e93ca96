package wickbench.bench;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.authority.Authority;
import wickbench.api.gate.Gate;
import wickbench.api.home.HomeFolder;
import wickbench.api.person.PersonId;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteProfile;
import wickbench.api.reading.Outcome;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.bench.verify.EvidenceDesk;
import wickbench.bench.verify.EvidenceView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** A bench with a journal and an index of its own, in a folder. */
final class BenchHome implements AutoCloseable {
    static final PersonId WRITER = new PersonId("writer");

    /** As in a house where nobody is enrolled yet. */
    static final Authority EVERYONE_MAY = (act, draft, passphrase) -> draft;

    final HomeFolder home;
    final JournalFolder journal;
    final H2Index index;
    final MethodShelf shelf;
    final RecordingDoor door;
    final SheetDesk desk;
    final JudgeCommand judge;
    final RecordCommand record;
    final OwedDesk owed;
    final AdviceDesk advice;
    final EvidenceDesk verifications;

    BenchHome(Path folder, Gate... gates) {
        this(folder, at -> Optional.empty(), gates);
    }

    /** Opens a bench whose site profile requires these checks. */
    static BenchHome requiring(Path folder, String... checks) {
        Profile profile = new Profile(
                "Feldmark Mill",
                ZoneId.of("Europe/Vienna"),
                List.of(),
                Set.of(checks),
                Set.of(),
                BigDecimal.ZERO,
                7,
                List.of(Outcome.values()),
                Profile.LEAST_RETENTION_YEARS,
                Optional.empty(),
                ControlRule.NONE,
                Set.of());
        return new BenchHome(folder, at -> Optional.of(profile));
    }

    private BenchHome(Path folder, SiteProfile profile, Gate... gates) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(
                folder.resolve("index"), journal, () -> List.of(new BenchView(), new OwedView(), new EvidenceView()));
        shelf = new MethodShelf(journal, index, EVERYONE_MAY);
        verifications = new EvidenceDesk(home, journal, index, EVERYONE_MAY, shelf, Optional.empty());
        Neighbours neighbours = new Neighbours(List.of(gates), profile);
        door = new RecordingDoor(home, journal, index, shelf, neighbours, EVERYONE_MAY);
        desk = new SheetDesk(shelf, () -> Site.of(Optional.empty(), journal.founding()));
        judge = new JudgeCommand(home, index, desk, shelf, neighbours);
        record = new RecordCommand(door, shelf, desk);
        owed = new OwedDesk(journal, index, EVERYONE_MAY);
        advice = new AdviceDesk(home, shelf, neighbours, profile, index);
    }

    BenchHome withMethods() {
        shelf.issue(Sheets.method("nut-swab"), WRITER);
        shelf.issue(Sheets.method("gluten-rinse"), WRITER);
        return this;
    }

    long entries() {
        return journal.stations().stream().mapToLong(journal::size).sum();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
