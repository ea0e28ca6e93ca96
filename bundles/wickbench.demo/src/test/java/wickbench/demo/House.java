package wickbench.demo;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;
import wickbench.api.profile.Site;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunSheets;
import wickbench.attachments.AttachmentService;
import wickbench.attachments.AttachmentView;
import wickbench.bench.BenchView;
import wickbench.bench.MethodShelf;
import wickbench.bench.Neighbours;
import wickbench.bench.RecordingDoor;
import wickbench.bench.SheetDesk;
import wickbench.bench.owed.OwedDesk;
import wickbench.bench.owed.OwedView;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.people.Keeping;
import wickbench.people.PeopleService;
import wickbench.people.PeopleView;
import wickbench.people.Roster;
import wickbench.reading.RecordedReadingJson;

/** A home with all its doors, opened without a framework. */
final class House implements AutoCloseable {
    private final Home home;
    private final JournalFolder journal;
    private final H2Index index;

    House(Path folder) {
        home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        index = H2Index.open(
                folder.resolve("index"),
                journal,
                () -> List.of(new BenchView(), new OwedView(), new PeopleView(), new AttachmentView()));
    }

    Doors doors() {
        MethodShelf shelf = new MethodShelf(journal, index, (act, draft, passphrase) -> draft);
        return new Doors(
                home,
                journal,
                new PeopleService(
                        home,
                        journal,
                        new Roster(home, journal, index),
                        (act, draft, passphrase) -> draft,
                        new Keeping(home, journal, new Roster(home, journal, index), at -> Optional.empty())),
                shelf,
                new RecordingDoor(
                        home,
                        journal,
                        index,
                        shelf,
                        new Neighbours(List.of(), at -> Optional.empty()),
                        (act, draft, passphrase) -> draft),
                new OwedDesk(journal, index, (act, draft, passphrase) -> draft),
                Optional.of(new AttachmentService(home, journal, index)));
    }

    RunSheets sheets() {
        return new SheetDesk(
                new MethodShelf(journal, index, (act, draft, passphrase) -> draft),
                () -> Site.of(Optional.empty(), journal.founding()));
    }

    JournalFolder journal() {
        return journal;
    }

    List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        journal.stations().forEach(station -> journal.read(station, 0, entries::add));
        return entries;
    }

    static RecordedReading reading(Entry entry) {
        return RecordedReadingJson.read(entry.ref().toString(), entry.body()).orRefuse();
    }

    @Override
    public void close() {
        index.close();
        journal.close();
    }
}
