package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;

/** Whenever the journal answers, every byte and every name that it changed was forced: no power cut changes what it said. */
class ForcedTest {
    @TempDir
    Path folder;

    /** What is asked of an open journal. */
    @FunctionalInterface
    private interface Asked {
        void of(JournalFolder journal, TracedDisk disk) throws IOException;
    }

    /** Opens a home, asks and closes it, and looks what was forced at each answer; {@code answers} of them are expected. */
    private static void forced(Path home, int answers, Asked asked) throws IOException {
        TracedDisk disk = TracedDisk.over(home);
        CutDisk cut = new CutDisk(home, disk.numbers());
        try (JournalFolder journal = Recorded.open(home, disk)) {
            answered(disk);
            asked.of(journal, disk);
        }
        answered(disk);
        int seen = 0;
        for (Change step : disk.trace()) {
            cut.take(step);
            if (step instanceof Change.Answered) {
                seen++;
                assertThat(cut.certain()).as("answer " + seen).isTrue();
            }
        }
        assertThat(seen).isEqualTo(answers);
    }

    private static void answered(TracedDisk disk) {
        disk.say(new Change.Answered(true));
    }

    @Test
    void founding_recording_and_signing() throws IOException {
        Path home = Files.createDirectories(folder.resolve("home"));
        forced(home, 6, (journal, disk) -> {
            for (int number = 0; number < 3; number++) {
                journal.append(Recorded.notes(number, 1));
                answered(disk);
            }
            journal.checkpoint();
            answered(disk);
        });
    }

    @Test
    void going_on_in_a_new_segment() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, StationFolder.SEGMENT - 2);
        forced(home, 4, (journal, disk) -> {
            journal.append(Recorded.notes(0, 3));
            answered(disk);
            journal.append(Recorded.notes(3, 1));
            answered(disk);
        });
        assertThat(Recorded.files(home).segment(1)).exists();
    }

    @Test
    void setting_torn_ends_aside() throws IOException {
        Path home = folder.resolve("home");
        Recorded.closed(home, 3);
        for (Path file :
                List.of(Recorded.files(home).segment(0), Recorded.files(home).checkpoints())) {
            Files.writeString(file, "{\"half", StandardOpenOption.APPEND);
        }
        forced(home, 2, (journal, disk) -> {});
    }

    @Test
    void refusing_on_a_full_disk() throws IOException {
        for (int write = 0; write < 2; write++) {
            Path home = folder.resolve("home-" + write);
            Recorded.closed(home, 3);
            int full = write;
            forced(home, 4, (journal, disk) -> {
                disk.fullAt(full);
                for (Runnable act :
                        List.<Runnable>of(() -> journal.append(Recorded.notes(3, 2)), journal::checkpoint)) {
                    try {
                        act.run();
                    } catch (Refusal e) {
                        assertThat(e.code()).isEqualTo(Say.FAILED);
                    }
                    answered(disk);
                }
            });
        }
    }
}
