package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.progress.Progress;
import wickbench.testing.SmallDisk;

/** A folder that really may not be written: it is named, read and verified, and nothing is recorded. */
@Tag("long")
class ReadOnlyFolderTest {
    @TempDir
    Path folder;

    @Test
    void a_home_on_a_read_only_disk_is_read() throws IOException {
        Optional<SmallDisk> small = SmallDisk.mount(folder.resolve("disk"), "1m");
        if (small.isEmpty()) {
            Path home = folder.resolve("home");
            Recorded.closed(home, 3);
            Files.delete(new Layout(home).lock());
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("r-xr-xr-x"));
            reads(home);
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxr-xr-x"));
            return;
        }
        try (SmallDisk disk = small.get()) {
            Path home = disk.folder().resolve("home");
            Recorded.closed(home, 3);
            disk.readOnly();
            reads(home);
        }
    }

    private static void reads(Path home) {
        try (JournalFolder journal = Recorded.open(home)) {
            assertThat(Recorded.entries(journal)).hasSize(4);
            assertThat(journal.verify(Progress.NONE).holds()).isTrue();
            assertThat(journal.status().readOnly().orElseThrow())
                    .startsWith("The home " + home + " cannot be written, so nothing can be recorded there");
            assertThatThrownBy(() -> journal.append(Recorded.notes(0, 1)))
                    .isInstanceOfSatisfying(
                            Refusal.class, no -> assertThat(no.code()).isEqualTo(Say.FAILED))
                    .hasMessageContaining(home.toString());
        }
    }
}
