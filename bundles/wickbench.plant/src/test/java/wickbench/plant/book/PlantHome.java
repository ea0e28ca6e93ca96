package wickbench.plant.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.doubt.Doubt;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;
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
import wickbench.plant.Stated;
import wickbench.reading.MethodJson;

/** A plant with a bench beside it, a journal, an index and a clock that stands still. */
public final class PlantHome implements AutoCloseable {
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    public static final Actor QUALITY = Actor.of(new PersonId("quality"));

    private static final Authority EVERYONE_MAY = (act, draft, passphrase) -> draft;
    private static final SiteProfile NO_PROFILE = at -> Optional.empty();
    private static final Path DEMO = Path.of("..", "..", "demo", "methods");

    public final HomeFolder home;
    public final SimulatedClock clock;
    public final JournalFolder journal;
    public final H2Index index;
    public final PlantDesk book;
    public final PlantDoing keeping;
    public final AttachmentService attachments;
    public final MethodShelf methods;
    public final OwedDesk owed;
    private final RecordingDoor door;
    private int samples;

    public PlantHome(Path folder) {
        this(folder, EVERYONE_MAY);
    }

    public PlantHome(Path folder, Authority authority) {
        home = new HomeFolder(folder);
        clock = home.simulate(1, START);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("quality-1"), ZONE, OptionalLong.of(1)));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new PlantView(), new BenchView(), new OwedView(), new AttachmentView()));
        SiteFacts site = () -> Site.of(Optional.empty(), journal.founding());
        methods = new MethodShelf(journal, index, EVERYONE_MAY);
        attachments = new AttachmentService(home, journal, index);
        owed = new OwedDesk(journal, index, EVERYONE_MAY);
        book = new PlantDesk(home, index, site, Optional.of(methods), Optional.of(owed));
        keeping = new PlantDoing(home, journal, authority, book, Optional.of(attachments));
        door = new RecordingDoor(home, journal, index, methods, new Neighbours(List.of(), NO_PROFILE), EVERYONE_MAY);
    }

    /** With the mill of the test file and the demonstration's methods. */
    public PlantHome furnished() {
        demoMethods().forEach(method -> methods.issue(method, QUALITY.who()));
        keeping.state(mill(), QUALITY);
        return this;
    }

    public static Path millFile() {
        return Path.of("src/test/resources/wickbench/plant/mill.json");
    }

    public static Stated mill() {
        return PlantFile.read(millFile());
    }

    public static List<Method> demoMethods() {
        try (Stream<Path> files = Files.list(DEMO)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .map(PlantHome::method)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Method method(Path file) {
        try {
            return MethodJson.read(file.toString(), Files.readString(file)).orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lets time pass. */
    public PlantHome after(Duration time) {
        clock.moveTo(clock.instant().plus(time));
        return this;
    }

    /** Puts every Negative read with a lot in doubt. */
    public UUID doubt(String cause, LotId lot) {
        Draft draft = new Draft(
                Draft.randomId(home.chance()),
                QUALITY.who(),
                cause,
                1,
                Doubt.into(Json.object().with("lot", lot.value()), List.of(Doubt.ofLot(cause, lot, Optional.empty()))));
        return journal.append(List.of(draft)).get(0).id();
    }

    /** Reads a sample started just now; twenty minutes pass. */
    public UUID read(String place, String method, boolean positive) {
        Instant started = clock.instant();
        after(Duration.ofMinutes(20));
        return door.record(List.of(reading(place, method, positive, started)), QUALITY.who())
                .get(0)
                .id();
    }

    private Reading reading(String place, String id, boolean positive, Instant started) {
        Method method = methods.inForce(new MethodId(id), clock.instant()).orElseThrow();
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        method.format().lines().forEach(line -> lines.put(line, Seen.SEEN));
        lines.put(LineRole.TEST, positive == method.format().sandwich() ? Seen.SEEN : Seen.NOT_SEEN);
        return new Reading(
                new Sample(
                        "S" + samples++,
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
                new PersonId("op-01"),
                Optional.empty(),
                new Times(
                        Optional.of(started.minus(Duration.ofHours(1))),
                        Optional.of(started.minusSeconds(60)),
                        Optional.of(Duration.ofSeconds(120)),
                        Optional.of(started),
                        Optional.of(started.plus(method.timing().develop()))),
                new Strip(method.format(), lines),
                Optional.empty(),
                preChecks(method),
                new Reading.Origin.Bench());
    }

    private static Map<String, BigDecimal> preChecks(Method method) {
        Map<String, BigDecimal> measured = new java.util.HashMap<>();
        method.preChecks()
                .forEach(check -> measured.put(check.name(), check.range().low()));
        return measured;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
