package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may write in the shared folder under a name. */
class WriterClaimTest {
    @TempDir
    Path root;

    @Test
    void a_run_that_died_leaves_its_mark_for_some_seconds_and_a_living_one_for_good() throws IOException {
        Path folder = root;
        RealDisk disk = new RealDisk();
        new WriterMark(new UUID(1, 1), 7).write(disk, folder);
        WriterClaim patient = new WriterClaim(disk, folder, home("h-1"), new UUID(2, 2));
        assertThat(patient.ask(0)).isEqualTo(WriterClaim.Answer.WAIT);
        assertThat(patient.ask(WriterClaim.DEAD.toNanos() - 1)).isEqualTo(WriterClaim.Answer.WAIT);
        assertThat(patient.ask(WriterClaim.DEAD.toNanos())).isEqualTo(WriterClaim.Answer.WRITE);
        WriterClaim second = new WriterClaim(disk, folder, home("h-2"), new UUID(3, 3));
        assertThat(second.ask(0)).isEqualTo(WriterClaim.Answer.WAIT);
        patient.ask(WriterClaim.DEAD.toNanos() + WriterClaim.BEAT.toNanos());
        assertThat(second.ask(1)).isEqualTo(WriterClaim.Answer.TAKEN);
        patient.release();
        assertThat(new WriterClaim(disk, folder, home("h-3"), new UUID(4, 4)).ask(0))
                .isEqualTo(WriterClaim.Answer.WRITE);
    }

    @Test
    void the_mark_of_an_earlier_run_of_the_same_home_is_its_own() throws IOException {
        RealDisk disk = new RealDisk();
        Path home = home("h");
        assertThat(new WriterClaim(disk, root, home, new UUID(1, 1)).ask(0)).isEqualTo(WriterClaim.Answer.WRITE);
        assertThat(new WriterClaim(disk, root, home, new UUID(2, 2)).ask(0)).isEqualTo(WriterClaim.Answer.WRITE);
        assertThat(new WriterClaim(disk, root, home("other"), new UUID(3, 3)).ask(0))
                .isEqualTo(WriterClaim.Answer.WAIT);
    }

    private Path home(String name) throws IOException {
        return Files.createDirectories(root.resolve(name));
    }
}
