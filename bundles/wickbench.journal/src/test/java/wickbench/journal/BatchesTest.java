package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.progress.Progress;

class BatchesTest {

    @Property(tries = 40)
    void any_batches_are_read_back_the_same_and_reopening_keeps_the_root(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 40) Integer> batches,
            @ForAll @IntRange(max = 5) int reopenBefore)
            throws IOException {
        Path folder = Files.createTempDirectory("batches");
        Disk disk = new FaultyDisk().unforced();
        List<Entry> appended = new ArrayList<>();
        Hash root = Kept.NOTHING.leaf();
        JournalFolder journal = Recorded.open(folder, disk);
        for (int i = 0; i < batches.size(); i++) {
            if (i == reopenBefore) {
                journal.close();
                journal = Recorded.open(folder, disk);
                assertThat(journal.status().root()).isEqualTo(root);
            }
            appended.addAll(journal.append(Recorded.notes(appended.size(), batches.get(i))));
            root = journal.status().root();
        }
        journal.close();
        try (JournalFolder again = Recorded.open(folder, disk)) {
            assertThat(again.status().root()).isEqualTo(root);
            assertThat(Recorded.entries(again).subList(1, appended.size() + 1)).isEqualTo(appended);
            assertThat(again.verify(Progress.NONE).findings()).isEmpty();
        }
        remove(folder);
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
