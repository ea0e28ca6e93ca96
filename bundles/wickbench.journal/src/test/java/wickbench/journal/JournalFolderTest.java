package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.StationId;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;

final class JournalFolderTest {
    private static final StationId STATION = new StationId("station-1");

    @TempDir
    Path folder;

    @Test
    void what_is_appended_is_read_back_also_after_reopening() {
        HomeFolder home = new HomeFolder(folder);
        List<Entry> appended = new ArrayList<>();
        try (JournalFolder journal = JournalFolder.open(home, appended::addAll)) {
            journal.append(IntStream.range(0, 25).mapToObj(i -> draft(home, i)).toList());
            journal.append(List.of(draft(home, 25)));
            assertThat(journal.status().notices()).isEmpty();
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        }
        try (JournalFolder journal = JournalFolder.open(home, entries -> {})) {
            List<Entry> read = new ArrayList<>();
            journal.read(STATION, 0, read::add);
            assertThat(read).isEqualTo(appended).hasSize(27);
            assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
            assertThat(journal.checkpoint()).map(c -> c.size()).contains(27L);
            assertThat(journal.line(read.get(5).ref())).contains(new String(EntryLine.write(read.get(5))));
        }
    }

    private static Draft draft(HomeFolder home, int number) {
        return new Draft(
                Draft.randomId(home.chance()),
                new PersonId("rivera"),
                "note.written",
                1,
                Json.object().with("n", number));
    }
}
