package wickbench.attachments;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;

/** A home on the disk with journal, index and attachments. */
final class TestHouse implements AutoCloseable {
    private final HomeFolder home;
    private final JournalFolder journal;
    private final H2Index index;
    private final AttachmentService attachments;

    TestHouse(Path folder) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        AttachmentView view = new AttachmentView();
        index = H2Index.open(folder.resolve("index"), journal, () -> List.of(view));
        attachments = new AttachmentService(home, journal, index);
    }

    AttachmentService attachments() {
        return attachments;
    }

    /** Appends an entry that something can be added to. */
    EntryRef anEntry() {
        Draft draft = new Draft(
                Draft.randomId(home.chance()),
                new PersonId("op-01"),
                "test.happened",
                1,
                Json.object().with("what", "something"));
        return journal.append(List.of(draft)).get(0).ref();
    }

    long size() {
        return journal.size(journal.stations().get(0));
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
