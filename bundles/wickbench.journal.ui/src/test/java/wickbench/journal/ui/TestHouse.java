package wickbench.journal.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import wickbench.api.home.HomeFolder;
import wickbench.api.index.IndexView;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.index.H2Index;
import wickbench.journal.HomeBackups;
import wickbench.journal.JournalFolder;
import wickbench.people.HashCost;
import wickbench.people.HouseAuthority;
import wickbench.people.HouseSignIn;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.Roster;
import wickbench.stations.ClashDesk;

/** A real home with its journal, index and back-ups. */
final class TestHouse implements AutoCloseable {
    private final JournalFolder journal;
    private final H2Index index;
    private final PeopleService people;
    private final JournalDoors doors;

    TestHouse(Path folder) {
        this(folder, List.of());
    }

    TestHouse(Path folder, List<IndexView> views) {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(folder.resolve("index"), journal, () -> views);
        Roster roster = new Roster(home, journal, index);
        HouseSignIn signIn = HouseSignIn.at(HashCost.LEAST, home, journal, index, roster);
        HouseAuthority authority = new HouseAuthority(home, roster, signIn, at -> Optional.empty());
        people = new PeopleService(
                home, journal, roster, authority, new Keeping(home, journal, roster, at -> Optional.empty()));
        doors = new JournalDoors(
                journal,
                journal.proofs(),
                new HomeBackups(home, () -> journal),
                index,
                journal.others(),
                new ClashDoors(new ClashDesk(home, journal, index, authority), people, authority, signIn));
    }

    PeopleService people() {
        return people;
    }

    void record(int from, int count) {
        for (int i = from; i < from + count; i++) {
            journal.append(List.of(draft(i)));
        }
    }

    /** Records much at once. */
    void recordMany(int count) {
        journal.append(IntStream.range(0, count).mapToObj(TestHouse::draft).toList());
    }

    private static Draft draft(int i) {
        return new Draft(
                new UUID(3, i),
                new PersonId("rivera"),
                "note.written",
                1,
                Json.object().with("n", i));
    }

    JournalDoors doors() {
        return doors;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
