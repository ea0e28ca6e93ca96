package wickbench.training;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import javax.imageio.ImageIO;
import wickbench.api.authority.Actor;
import wickbench.api.authority.Authority;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Hash;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Seen;
import wickbench.api.person.People;
import wickbench.api.person.Person;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.api.profile.SiteProfile;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor.Kept;
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
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.reading.MethodJson;
import wickbench.training.book.Coach;
import wickbench.training.book.IndexedBook;
import wickbench.training.book.JournalPen;
import wickbench.training.book.Records;
import wickbench.training.book.TrainingGate;
import wickbench.training.book.TrainingView;
import wickbench.training.face.PrintedTraining;
import wickbench.training.round.RoundBook;

/** A training book with a bench beside it, a journal, an index and a clock that stands still. */
public final class TrainingHome implements AutoCloseable {
    public static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    public static final Actor TRAINER = Actor.of(new PersonId("trainer"));
    public static final PersonId OP = new PersonId("op-01");
    public static final PersonId OTHER = new PersonId("op-02");
    public static final MethodId METHOD = new MethodId("hazelnut-swab-dry");

    private static final Authority EVERYONE_MAY = (act, draft, passphrase) -> draft;
    private static final SiteProfile NO_PROFILE = at -> Optional.empty();
    private static final Path DEMO = Path.of("..", "..", "demo", "methods");

    public final HomeFolder home;
    public final SimulatedClock clock;
    public final JournalFolder journal;
    public final H2Index index;
    public final IndexedBook book;
    public final Coach coach;
    public final JournalPen pen;
    public final AttachmentService attachments;
    public final RoundBook rounds;
    public final Records records;
    public final PrintedTraining papers;
    public final TrainingGate gate;
    public final RecordingDoor door;
    public final MethodShelf methods;
    private int samples;

    public TrainingHome(Path folder) {
        this(folder, EVERYONE_MAY);
    }

    public TrainingHome(Path folder, Authority authority) {
        home = new HomeFolder(folder);
        clock = home.simulate(1, START);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("desk-1"), ZONE, OptionalLong.of(1)));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new TrainingView(), new BenchView(), new AttachmentView()));
        book = new IndexedBook(home, index, () -> Site.of(Optional.empty(), journal.founding()));
        pen = new JournalPen(home, journal, authority);
        coach = new Coach(book, pen);
        attachments = new AttachmentService(home, journal, index);
        rounds = new RoundBook(book, pen, attachments);
        records = new Records(book, pen, new Enrolled(), rounds);
        papers = new PrintedTraining(records, rounds, new Enrolled(), List.of());
        gate = new TrainingGate(book, NO_PROFILE);
        methods = new MethodShelf(journal, index, EVERYONE_MAY);
        door = new RecordingDoor(
                home, journal, index, methods, new Neighbours(List.of(gate), NO_PROFILE), EVERYONE_MAY);
    }

    /** The people of the house, as they stand in a list. */
    private record Enrolled() implements People {
        @Override
        public List<Person> all() {
            return List.of(new Person(OP, Optional.of("Op One"), Set.of(Role.OPERATOR)));
        }

        @Override
        public Optional<Person> find(PersonId id) {
            return all().stream().filter(person -> person.id().equals(id)).findFirst();
        }

        @Override
        public Person enrol(PersonId id, String name, Set<Role> roles, PersonId by) {
            throw new IllegalStateException("nobody is enrolled here");
        }

        @Override
        public Person assign(PersonId id, Set<Role> roles, PersonId by) {
            throw new IllegalStateException("no roles are given here");
        }
    }

    public static Method method(String file) {
        try {
            return MethodJson.read(file, Files.readString(DEMO.resolve(file))).orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public TrainingHome issued() {
        methods.issue(method("hazelnut-swab-dry.json"), TRAINER.who());
        return this;
    }

    public TrainingHome revised() {
        methods.issue(method("edition-2/hazelnut-swab-dry.json"), TRAINER.who());
        return this;
    }

    /** Lets time pass. */
    public TrainingHome after(Duration time) {
        clock.moveTo(clock.instant().plus(time));
        return this;
    }

    public TrainingHome authorised(PersonId person) {
        coach.authorise(person, METHOD, Optional.empty(), "round passed", TRAINER);
        return this;
    }

    public Competence now(PersonId person) {
        return records.of(person, METHOD, clock.instant());
    }

    public Kept read(PersonId operator, Optional<PersonId> observer) {
        return door.record(List.of(reading(operator, observer)), operator).get(0);
    }

    public Reading reading(PersonId operator, Optional<PersonId> observer) {
        Instant read = clock.instant();
        Method method = method("hazelnut-swab-dry.json");
        Instant started = read.minus(method.timing().develop());
        return new Reading(
                new Sample(
                        "S" + samples++,
                        "Line 1 hopper",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Reason.AFTER_CLEANING),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        BigDecimal.ONE,
                        Optional.empty()),
                method.ref().id(),
                method.route(),
                new LotId("HZ-1"),
                operator,
                observer,
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
                                LineRole.TEST, Seen.NOT_SEEN)),
                Optional.empty(),
                Map.of(),
                new Reading.Origin.Bench());
    }

    /** Keeps a picture of its own for each number. */
    public Hash photograph(int number) {
        BufferedImage picture = new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(1, 1, number + 1);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return attachments
                .add(
                        new ByteArrayInputStream(bytes.toByteArray()),
                        "strip-" + number + ".png",
                        new EntryRef(new StationId("desk-1"), 0),
                        TRAINER.who())
                .attachment()
                .content();
    }

    public List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        journal.read(journal.stations().get(0), 0, entries::add);
        return entries;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
