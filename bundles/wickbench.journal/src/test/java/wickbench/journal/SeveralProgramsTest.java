package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;

/** Programs that are killed while they record, and programs that want the home another one holds. */
class SeveralProgramsTest {
    private static final int KILLS = 20;

    @TempDir
    Path folder;

    @Test
    void no_acknowledged_entry_is_lost_when_the_program_is_killed() throws IOException, InterruptedException {
        Random chance = new Random(1);
        long acknowledged = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            long size = killedAfter(1 + chance.nextInt(60));
            assertThat(size).isGreaterThan(acknowledged);
            acknowledged = size;
            try (JournalFolder journal = Recorded.open(folder)) {
                assertThat(journal.size(Recorded.STATION)).isGreaterThanOrEqualTo(acknowledged);
            }
            assertThat(Recorded.verified(folder).findings()).isEmpty();
        }
    }

    /** Kills a recorder once it has acknowledged so many times; returns the last size that it acknowledged. */
    private long killedAfter(int times) throws IOException, InterruptedException {
        Process recorder = KilledRecorder.start(folder, "record");
        try (BufferedReader said = recorder.inputReader()) {
            assertThat(said.readLine()).isEqualTo("open");
            long acknowledged = 0;
            for (int i = 0; i < times; i++) {
                acknowledged = Long.parseLong(said.readLine());
            }
            // through its handle, which leaves what it said to be read
            recorder.toHandle().destroyForcibly();
            // what it said between the last line read and its death was acknowledged too
            List<String> rest = said.lines().toList();
            recorder.waitFor();
            return rest.stream()
                    .filter(line -> line.matches("[0-9]+"))
                    .mapToLong(Long::parseLong)
                    .reduce(acknowledged, Math::max);
        }
    }

    @Test
    void a_home_that_another_program_holds_names_it_and_is_free_once_that_program_died()
            throws IOException, InterruptedException {
        Process holder = KilledRecorder.start(folder, "hold");
        try (BufferedReader said = holder.inputReader()) {
            assertThat(said.readLine()).isEqualTo("open");
            assertThatThrownBy(() -> Recorded.open(folder))
                    .isInstanceOfSatisfying(
                            Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("home.held"))
                    .hasMessageContaining(Long.toString(holder.pid()))
                    .hasMessageContaining(
                            holder.info().startInstant().orElseThrow().toString());
            Files.delete(new Layout(folder).holder());
            assertThatThrownBy(() -> Recorded.open(folder)).hasMessageContaining("does not say its name");
            Files.writeString(new Layout(folder).holder(), "{");
            assertThatThrownBy(() -> Recorded.open(folder)).hasMessageContaining("does not say its name");
        } finally {
            holder.destroyForcibly();
            holder.waitFor();
        }
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThat(journal.status().readOnly()).isEmpty();
        }
    }

    @Test
    void a_home_that_this_program_holds_is_not_opened_twice_and_stays_held() throws IOException, InterruptedException {
        try (JournalFolder journal = Recorded.open(folder)) {
            assertThatThrownBy(() -> Recorded.open(folder))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining(Long.toString(ProcessHandle.current().pid()));
            Process second = KilledRecorder.start(folder, "hold");
            assertThat(second.waitFor()).isNotZero();
            assertThat(journal.append(Recorded.notes(0, 1))).hasSize(1);
        }
    }
}
