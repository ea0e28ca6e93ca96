package wickbench.people;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Journal;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** A home on the disk with journal, index and people. */
final class TestHouse implements AutoCloseable {
    private final HomeFolder home;
    private final JournalFolder journal;
    private final H2Index index;
    private final PeopleService people;

    TestHouse(Path folder) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        PeopleView view = new PeopleView();
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(view));
        people = new PeopleService(home, journal, index);
    }

    PeopleService people() {
        return people;
    }

    Journal journal() {
        return journal;
    }

    H2Index index() {
        return index;
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
