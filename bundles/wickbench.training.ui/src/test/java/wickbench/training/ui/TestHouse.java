package wickbench.training.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Passphrase;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.api.person.PersonId;
import wickbench.api.person.Role;
import wickbench.api.profile.Site;
import wickbench.attachments.AttachmentService;
import wickbench.attachments.AttachmentView;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
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
import wickbench.report.chart.ScreenPainter;
import wickbench.training.book.Coach;
import wickbench.training.book.DrillBook;
import wickbench.training.book.IndexedBook;
import wickbench.training.book.JournalPen;
import wickbench.training.book.Records;
import wickbench.training.book.TrainingView;
import wickbench.training.face.PrintedTraining;
import wickbench.training.face.SheetFiles;
import wickbench.training.round.RoundBook;

/** A real home with its people, methods and training book. */
final class TestHouse implements AutoCloseable {
    static final PersonId TRAINER = new PersonId("trainer");
    static final PersonId OP = new PersonId("op-01");
    static final String PHRASE = "seven grey herons wade";
    private static final Path DEMO = Path.of("..", "..", "demo", "methods");

    private final JournalFolder journal;
    private final H2Index index;
    private final PeopleService people;
    private final HouseCredentials credentials;
    private final HouseSignIn signIn;
    private final MethodShelf methods;
    private final AttachmentService attachments;
    private final TrainingDoors doors;

    TestHouse(Path folder) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.found(new Founding(new StationId("desk-1"), ZoneId.of("Europe/Vienna"), OptionalLong.empty()));
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(
                        new PeopleView(),
                        new RecoveryView(),
                        new TrainingView(),
                        new BenchView(),
                        new AttachmentView()));
        Roster roster = new Roster(home, journal, index);
        signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        Keeping keeping = new Keeping(home, journal, roster, at -> Optional.empty());
        people = new PeopleService(home, journal, roster, authority, keeping);
        credentials =
                new HouseCredentials(home, journal, roster, signIn, authority, keeping, SecretFiles.at(HashCost.LEAST, home, roster));
        methods = new MethodShelf(journal, index, authority);
        IndexedBook book = new IndexedBook(home, index, () -> Site.of(Optional.empty(), journal.founding()));
        JournalPen pen = new JournalPen(home, journal, authority);
        attachments = new AttachmentService(home, journal, index);
        RoundBook rounds = new RoundBook(book, pen, attachments);
        Records records = new Records(book, pen, people, rounds);
        doors = new TrainingDoors(
                home,
                records,
                new Coach(book, pen),
                new BlindDoors(rounds, new SheetFiles(records), Optional.of(methods), attachments, new StripStarts()),
                new PrintedTraining(records, rounds, people, List.of()),
                new DrillBook(book, pen),
                people,
                authority,
                signIn,
                Optional.of(new ScreenPainter()));
    }

    /** Enrols an administrator and trainer, and an operator, and issues a method. */
    TestHouse peopled() {
        people.enrol(TRAINER, "Tilde Rask", Set.of(Role.ADMINISTRATOR, Role.TRAINER), TRAINER);
        people.enrol(OP, "Ode Penn", Set.of(Role.OPERATOR), TRAINER);
        return issued("hazelnut-swab-dry.json");
    }

    /** Issues a second method. */
    TestHouse alsoMilk() {
        return issued("milk-rinse.json");
    }

    /** Issues a newer version of the first method. */
    TestHouse revised() {
        return issued("edition-2/hazelnut-swab-dry.json");
    }

    private TestHouse issued(String file) {
        try {
            methods.issue(
                    MethodJson.read("method", Files.readString(DEMO.resolve(file)))
                            .orRefuse(),
                    TRAINER);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Gives the trainer a passphrase, so that roles ask for it from now on. */
    TestHouse keyed() {
        credentials.set(TRAINER, Optional.empty(), phrase(PHRASE));
        return this;
    }

    /** Gives another one the same passphrase, as an administrator does: one to begin with, which they change. */
    TestHouse keyed(PersonId person) {
        String once = "eleven wet stones lie";
        credentials.reset(person, phrase(once), new Credentials.Signing(TRAINER, phrase(PHRASE)), Optional.empty());
        credentials.set(person, Optional.of(phrase(once)), phrase(PHRASE));
        return this;
    }

    private static Passphrase phrase(String text) {
        return Passphrase.of(text.toCharArray());
    }

    /** Enrols a second operator. */
    TestHouse joinedBy(PersonId person, String name) {
        people.enrol(person, name, Set.of(Role.OPERATOR), TRAINER);
        return this;
    }

    TrainingDoors doors() {
        return doors;
    }

    long entries() {
        return journal.status().size();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
