package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;

/** Programs that want the home another one holds. */
class SeveralProgramsTest {
    @TempDir
    Path folder;

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
