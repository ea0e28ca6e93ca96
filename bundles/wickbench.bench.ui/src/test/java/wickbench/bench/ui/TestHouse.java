package wickbench.bench.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wickbench.api.home.HomeFolder;
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

    TestHouse(Path folder) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(new BenchView(), new PeopleView()));
        shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        PeopleService people = new PeopleService(
                home,
                journal,
                new Roster(home, journal, index),
                (act, draft, passphrase) -> draft,
                new Keeping(home, journal, new Roster(home, journal, index), at -> Optional.empty()));
        people.enrol(ACTOR, "Ina Moos", Set.of(Role.OPERATOR, Role.ADMINISTRATOR), ACTOR);
        people.enrol(new PersonId("op-07"), "Jost Rietgras", Set.of(Role.OPERATOR, Role.ADMINISTRATOR), ACTOR);
        doors = new BenchDoors(
                home,
                journal,
                shelf,
                new RecordingDoor(
                        home,
                        journal,
                        index,
                        shelf,
                        new Neighbours(List.of(), at -> Optional.empty()),
                        (act, draft, passphrase) -> draft),
                new SheetDesk(shelf, site()),
                List.of(people));
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
        HouseSignIn signIn = new HouseSignIn(home, journal, index, roster);
        return new MethodDoors(
                shelf,
                site(),
                doors.people().get(0),
                new HouseAuthority(home, roster, signIn, at -> Optional.empty()),
                signIn);
    }

    SiteFacts site() {
        return () -> Site.of(Optional.empty(), journal.founding());
    }

    long entries() {
        return journal.size(journal.stations().get(0));
    }

    StationId station() {
        return journal.stations().get(0);
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
