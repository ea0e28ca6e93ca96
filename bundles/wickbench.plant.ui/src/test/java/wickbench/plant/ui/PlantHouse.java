package wickbench.plant.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
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
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseCredentials;
import wickbench.people.HouseSignIn;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.people.SecretFiles;
import wickbench.plant.book.PlantDesk;
import wickbench.plant.book.PlantDoing;
import wickbench.plant.book.PlantView;
import wickbench.reading.MethodJson;

/** A real home with people, roles and a passphrase, a plant and a bench; its clock stands still. */
final class PlantHouse implements AutoCloseable {
    static final PersonId LEAD = new PersonId("lead");
    static final PersonId OPERATOR = new PersonId("op-01");
    static final String LEADS = "nine small boats ashore";
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    static final Path MILL = Path.of("..", "wickbench.plant", "src/test/resources/wickbench/plant/mill.json");
    private static final Path METHODS = Path.of("..", "..", "demo", "methods");

    private final JournalFolder journal;
    private final H2Index index;
    private final HouseSignIn signIn;
    private final SimulatedClock clock;
    private final MethodShelf methods;
    private final RecordingDoor door;
    private final PlantDoors doors;

    PlantHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        clock = home.simulate(1, START);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("quality-1"), ZoneId.of("Europe/Vienna"), OptionalLong.of(1)));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(
                        new PlantView(), new PeopleView(), new BenchView(), new OwedView(), new AttachmentView()));
        Roster roster = new Roster(home, journal, index);
        signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        wickbench.people.Keeping keeping = new wickbench.people.Keeping(home, journal, roster, at -> Optional.empty());
        PeopleService people = new PeopleService(home, journal, roster, authority, keeping);
        HouseCredentials credentials = new HouseCredentials(
                home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster));
        people.enrol(LEAD, "Wenke Thalbach", Set.of(Role.ADMINISTRATOR, Role.REVIEWER), LEAD);
        credentials.set(LEAD, Optional.empty(), typed());
        signIn.open(LEAD, typed());
        people.enrol(OPERATOR, "Runa Feldmark", Set.of(Role.OPERATOR), LEAD);
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        methods = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        AttachmentService attachments = new AttachmentService(home, journal, index);
        PlantDesk book = new PlantDesk(
                home,
                index,
                site,
                Optional.of(methods),
                Optional.of(new OwedDesk(journal, index, (act, draft, passphrase) -> draft)));
        PlantDoing doing = new PlantDoing(home, journal, authority, book, Optional.of(attachments));
        door = new RecordingDoor(
                home,
                journal,
                index,
                methods,
                new Neighbours(List.of(), at -> Optional.empty()),
                (act, draft, passphrase) -> draft);
        doors = new PlantDoors(book, doing, people, authority, signIn, attachments);
    }

    static Passphrase typed() {
        return Passphrase.of(LEADS.toCharArray());
    }

    PlantDoors doors() {
        return doors;
    }

    static Actor lead() {
        return Actor.of(LEAD);
    }

    /** With the mill of the plant's own tests, and the demonstration's methods. */
    PlantHouse furnished() {
        try (Stream<Path> files = Files.list(METHODS)) {
            files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .forEach(file -> methods.issue(read(file), LEAD));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        doors.keeping().state(doors.keeping().read(MILL), lead());
        return this;
    }

    private static Method read(Path file) {
        try {
            return MethodJson.read(file.toString(), Files.readString(file)).orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void after(Duration time) {
        clock.moveTo(clock.instant().plus(time));
        // a sitting ends by itself
        signIn.open(LEAD, typed());
    }

    /** Reads a sample started just now; twenty minutes pass. */
    UUID read(String place, String id, boolean positive) {
        Method method = methods.inForce(new MethodId(id), clock.instant()).orElseThrow();
        Instant started = clock.instant();
        after(Duration.ofMinutes(20));
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        method.format().lines().forEach(line -> lines.put(line, Seen.SEEN));
        lines.put(LineRole.TEST, positive == method.format().sandwich() ? Seen.SEEN : Seen.NOT_SEEN);
        Map<String, BigDecimal> measured = new HashMap<>();
        method.preChecks()
                .forEach(check -> measured.put(check.name(), check.range().low()));
        Reading reading = new Reading(
                new Sample(
                        "S-" + started.getEpochSecond(),
                        place,
                        Optional.of("L2"),
                        Optional.empty(),
                        Optional.of(Reason.AFTER_CLEANING),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        Optional.empty()),
                method.ref().id(),
                method.route(),
                new LotId("A-1"),
                OPERATOR,
                Optional.empty(),
                new Times(
                        Optional.of(started.minus(Duration.ofHours(1))),
                        Optional.of(started.minusSeconds(60)),
                        Optional.of(Duration.ofSeconds(120)),
                        Optional.of(started),
                        Optional.of(started.plus(method.timing().develop()))),
                new Strip(method.format(), lines),
                Optional.empty(),
                measured,
                new Reading.Origin.Bench());
        return door.record(List.of(reading), OPERATOR).get(0).id();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
