package wickbench.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.index.H2Index;
import wickbench.journal.JournalFolder;
import wickbench.testing.WordsCheck;

class TallyTest {
    @TempDir
    private Path folder;

    @Test
    void counts_the_entries_of_each_kind() {
        HomeFolder home = new HomeFolder(folder);
        try (JournalFolder journal = JournalFolder.open(home, entries -> {});
                H2Index index = H2Index.open(folder.resolve("index"), journal, () -> List.of(new TallyView()))) {
            journal.append(List.of(note(home, "note.made"), note(home, "note.made"), note(home, "note.read")));
            assertThat(Tally.all(index)).contains(new Tally("note.made", 2), new Tally("note.read", 1));
        }
    }

    @Test
    void every_word_asked_for_is_there_and_no_other() {
        WordsCheck words = new WordsCheck("tally");
        words.noneIsMissing();
        words.noneIsLeftOver();
        words.apostrophesAreDoubled();
    }

    private static Draft note(HomeFolder home, String kind) {
        return new Draft(Draft.randomId(home.chance()), new PersonId("op-1"), kind, 1, Json.object());
    }
}
