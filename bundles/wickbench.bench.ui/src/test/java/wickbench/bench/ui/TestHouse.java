package wickbench.bench.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import wickbench.api.gate.Gate;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.StationId;
import wickbench.api.lot.Lots;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.planned.PlannedTests;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Profile;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Outcome;
import wickbench.attachments.AttachmentService;
import wickbench.attachments.AttachmentView;
import wickbench.bench.AdviceDesk;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.bench.run.OpenRuns;
import wickbench.bench.verify.EvidenceDesk;
import wickbench.bench.verify.EvidenceView;
import wickbench.bench.verify.PaperDesk;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.reading.MethodJson;

/** A real home with the demonstration's methods and two people. */
final class TestHouse implements AutoCloseable {
    static final Path DEMO = Path.of("../../demo");
    static final PersonId ACTOR = new PersonId("op-05");

    private final HomeFolder home;
    private final JournalFolder journal;
    private final H2Index index;
    private final MethodShelf shelf;
    private final BenchDoors doors;
    private final ExecutorService thread = Executors.newSingleThreadExecutor();
    private final ScheduledExecutorService bells = Executors.newSingleThreadScheduledExecutor();
    private final OpenRuns runs;
    /** What the clocks of the runs say; a test lets time pass. */
    final BenchTime time;

    private Optional<Profile> profile = Optional.empty();
    /** What the stock room says; none is installed until a test puts one there. */
    final List<Lots> stock = new ArrayList<>();
    /** What a programme makes due; none is kept until a test puts one there. */
    final List<PlannedTests> planned = new ArrayList<>();

    TestHouse(Path folder) {
        this(folder, new BenchTime());
    }

    TestHouse(Path folder, BenchTime time, Gate... gates) {
        this.time = time;
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(
                        new BenchView(), new EvidenceView(), new OwedView(), new PeopleView(), new AttachmentView()));
        shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        PeopleService people = new PeopleService(
                home,
                journal,
                new Roster(home, journal, index),
                (act, draft, passphrase) -> draft,
                new Keeping(home, journal, new Roster(home, journal, index), at -> Optional.empty()));
        people.enrol(ACTOR, "Ina Moos", Set.of(Role.OPERATOR, Role.ADMINISTRATOR), ACTOR);
        people.enrol(new PersonId("op-07"), "Jost Rietgras", Set.of(Role.OPERATOR, Role.ADMINISTRATOR), ACTOR);
        Neighbours neighbours = new Neighbours(List.of(gates), at -> Optional.empty());
        RecordingDoor door =
                new RecordingDoor(home, journal, index, shelf, neighbours, (act, draft, passphrase) -> draft);
        runs = new OpenRuns(
                folder.resolve("runs"),
                time,
                thread,
                (wait, act) -> {
                    if (!bells.isShutdown()) {
                        bells.schedule(act, Math.min(20, wait.toMillis()), TimeUnit.MILLISECONDS);
                    }
                },
                door,
                (draft, run) -> journal.append(List.of(draft)),
                UUID::randomUUID);
        Roster roster = new Roster(home, journal, index);
        doors = new BenchDoors(
                home,
                journal,
                index,
                shelf,
                door,
                new SheetDesk(shelf, site()),
                runs,
                new OwedDesk(journal, index, (act, draft, passphrase) -> draft),
                new AdviceDesk(home, shelf, neighbours, at -> profile, index),
                new BenchDoors.Persons(
                        people, HouseSignIn.at(HashCost.LEAST, home, journal, index, roster), at -> profile, site()),
                stock,
                new AttachmentService(home, journal, index),
                planned,
                new PhotoTray());
    }

    /** From now on the site asks a second person to read every strip that looks negative. */
    void readEveryNegativeTwice() {
        profile = Optional.of(profile(BigDecimal.ONE, ControlRule.NONE));
    }

    /** From now on the site asks for these run controls. */
    void askForControls(ControlRule controls) {
        profile = Optional.of(profile(BigDecimal.ZERO, controls));
    }

    private static Profile profile(BigDecimal secondReaders, ControlRule controls) {
        return new Profile(
                "Feldmark Mill",
                noonNow(),
                List.of(),
                Set.of(),
                Set.of(),
                secondReaders,
                7,
                List.of(Outcome.values()),
                Profile.LEAST_RETENTION_YEARS,
                Optional.empty(),
                controls,
                Set.of());
    }

    /** A place where it is about noon, so that no test sees a day end. */
    private static ZoneId noonNow() {
        int hour = InstantSource.system().instant().atOffset(ZoneOffset.UTC).getHour();
        return ZoneOffset.ofHours(12 - hour);
    }

    TestHouse withMethods() {
        try (Stream<Path> files = Files.list(DEMO.resolve("methods"))) {
            for (Path file : files.filter(path -> path.toString().endsWith(".json"))
                    .sorted()
                    .toList()) {
                shelf.issue(
                        MethodJson.read(file.toString(), Files.readString(file)).orRefuse(), ACTOR);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    BenchDoors doors() {
        return doors;
    }

    JournalFolder journal() {
        return journal;
    }

    /** The ports of the page of the methods, where nobody needs to sign in. */
    MethodDoors methods() {
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        EvidenceDesk evidence = new EvidenceDesk(home, journal, index, authority, shelf, Optional.empty());
        return new MethodDoors(
                shelf,
                site(),
                doors.persons().people(),
                authority,
                signIn,
                evidence,
                new PaperDesk(shelf, evidence, List.of()),
                Optional.empty());
    }

    SiteFacts site() {
        return () -> Site.of(Optional.empty(), journal.founding());
    }

    long entries() {
        return journal.size(journal.stations().get(0));
    }

    /** Returns what kinds of entry stand in the journal. */
    Set<String> kinds() {
        Set<String> kinds = new HashSet<>();
        journal.read(station(), 0, entry -> kinds.add(entry.kind()) || true);
        return kinds;
    }

    StationId station() {
        return journal.stations().get(0);
    }

    @Override
    public void close() {
        bells.shutdownNow();
        thread.shutdown();
        runs.close();
        index.close();
        journal.close();
    }
}
