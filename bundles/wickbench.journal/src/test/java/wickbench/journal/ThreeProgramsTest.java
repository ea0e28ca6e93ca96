package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/** Three real programs record at once and see one another's entries through a folder. */
@Tag("long")
class ThreeProgramsTest {
    private static final int NOTES = 150;
    private static final List<String> STATIONS = List.of("bench", "stock", "quality");

    @TempDir
    Path root;

    @Test
    void every_entry_of_each_comes_to_the_others_whole_and_none_is_lost() throws IOException, InterruptedException {
        Path share = Files.createDirectory(root.resolve("share"));
        assertThat(new ShareFolder(share).make(new RealDisk())).isTrue();
        List<Process> programs = new ArrayList<>();
        try {
            for (String station : STATIONS) {
                programs.add(SharingRecorder.start(root.resolve(station), share, station, NOTES, STATIONS.size()));
            }
            List<BufferedReader> said =
                    programs.stream().map(Process::inputReader).toList();
            for (BufferedReader each : said) {
                assertThat(each.readLine()).startsWith("all ");
            }
            for (Process program : programs) {
                program.outputWriter().write("\n");
                program.outputWriter().flush();
                assertThat(program.waitFor()).isZero();
            }
        } finally {
            programs.forEach(Process::destroyForcibly);
        }
        for (String here : STATIONS) {
            sameBytes(here);
        }
    }

    private void sameBytes(String here) throws IOException {
        for (String other : STATIONS) {
            byte[] kept = Files.readAllBytes(segment(other, other));
            byte[] copy = Files.readAllBytes(segment(here, other));
            assertThat(kept).startsWith(copy);
        }
        try (JournalFolder journal = Recorded.open(root.resolve(here))) {
            assertThat(journal.stations()).hasSameSizeAs(STATIONS);
            Verification verified = journal.verify(Progress.NONE);
            assertThat(verified.findings()).isEmpty();
        }
    }

    private Path segment(String home, String station) {
        return new Layout(root.resolve(home)).station(new StationId(station)).segment(0);
    }
}
