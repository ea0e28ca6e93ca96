package wickbench.index.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import wickbench.api.home.HomeFolder;
import wickbench.api.index.IndexView;
import wickbench.api.index.Rows;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.journal.JournalFolder;
import wickbench.testing.HeardTerminal;

class IndexCommandTest {
    private static final PersonId RIVERA = new PersonId("rivera");

    @TempDir
    Path folder;

    private JournalFolder journal;
    private HouseIndex index;

    @BeforeEach
    void open() {
        HomeFolder home = new HomeFolder(folder);
        journal = JournalFolder.open(home, entries -> {});
        journal.append(List.of(new Draft(Draft.randomId(home.chance()), RIVERA, "word.said", 1, Json.object())));
        index = new HouseIndex(home, journal);
    }

    @AfterEach
    void close() {
        index.close();
        journal.close();
    }

    @Test
    void statusAndRebuildSayHowFarEachViewIs() {
        HeardTerminal lines = HeardTerminal.ofNobody(false);
        assertThat(run(lines, "status")).isZero();
        assertThat(lines.printed()).containsExactly("view | taken | of | state", "entry_ids | 2 | 2 | complete");
        HeardTerminal again = HeardTerminal.ofNobody(true);
        assertThat(run(again, "rebuild")).isZero();
        assertThat(again.printed()).containsExactly("[{\"of\":2,\"taken\":2,\"version\":2,\"view\":\"entry_ids\"}]");
    }

    @Test
    void aViewThatStoppedIsFoundWanting() {
        index.addView(new Stubborn());
        HeardTerminal lines = HeardTerminal.ofNobody(false);
        assertThat(run(lines, "status")).isEqualTo(1);
        assertThat(lines.printed()).contains("stubborn | 0 | 2 | stopped: station-1:0: not for me");
        index.removeView(new Stubborn());
        assertThat(run(HeardTerminal.ofNobody(false), "status")).isZero();
    }

    private int run(HeardTerminal lines, String argument) {
        return new CommandLine(new IndexCommands(index).commands(lines)).execute(argument);
    }

    /** A view that takes nothing. */
    private record Stubborn() implements IndexView {
        @Override
        public String name() {
            return "stubborn";
        }

        @Override
        public int version() {
            return 1;
        }

        @Override
        public List<String> tables() {
            return List.of();
        }

        @Override
        public Set<String> subjects(Entry entry) {
            return Set.of();
        }

        @Override
        public void apply(Entry entry, Rows rows) {
            throw new IllegalStateException("not for me");
        }
    }
}
