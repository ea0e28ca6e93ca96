package wickbench.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

/** Homes with something recorded in them, for tests. */
final class Recorded {
    static final StationId STATION = new StationId("station-1");

    private Recorded() {}

    static Draft note(int number) {
        Json.Obj body = Json.object().with("n", number).with("text", "rinse \u20ac\n");
        return new Draft(new UUID(number, 7), new PersonId("rivera"), "note.written", 1, body);
    }

    static List<Draft> notes(int from, int count) {
        return IntStream.range(from, from + count).mapToObj(Recorded::note).toList();
    }

    static JournalFolder open(Path folder) {
        return open(new HomeFolder(folder));
    }

    static JournalFolder open(Home home) {
        return JournalFolder.open(home, entries -> {});
    }

    static JournalFolder open(Path folder, Disk disk) {
        return JournalFolder.open(new HomeFolder(folder), disk, entries -> {});
    }

    /** Records a founding entry and notes, closed in good order. */
    static void closed(Path folder, int notes) {
        try (JournalFolder journal = open(folder)) {
            journal.append(notes(0, notes));
        }
    }

    /** Records notes one by one in a home that is then left as if the program had been killed; no checkpoint covers them. */
    static void killed(Path folder, int notes) {
        Path living = folder.resolveSibling(folder.getFileName() + "-living");
        try (JournalFolder journal = open(living)) {
            notes(0, notes).forEach(note -> journal.append(List.of(note)));
            copy(living, folder);
        }
    }

    static StationFolder files(Path folder) {
        return new Layout(folder).station(STATION);
    }

    static List<Entry> entries(JournalFolder journal) {
        List<Entry> entries = new ArrayList<>();
        journal.read(STATION, 0, entries::add);
        return entries;
    }

    static List<Entry> entries(Path folder) {
        try (JournalFolder journal = open(folder)) {
            return entries(journal);
        }
    }

    static Verification verified(Path folder) {
        try (JournalFolder journal = open(folder)) {
            return journal.verify(Progress.NONE);
        }
    }

    static Verification verified(Path folder, Disk disk) {
        try (JournalFolder journal = open(folder, disk)) {
            return journal.verify(Progress.NONE);
        }
    }

    /** Copies a home as a crash would leave it: without who holds it. */
    static void copy(Path from, Path to) {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                if (!path.getFileName().toString().equals("holder.json")) {
                    Files.copy(path, to.resolve(from.relativize(path).toString()));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void remove(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
