package wickbench.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.SmallDisk;

/** A home that really may not be written: what was recorded can still be read by all tables. */
class ReadOnlyHomeTest {
    private static final Tallies TALLIES = Tallies.named("tallies");

    @TempDir
    Path folder;

    @Test
    void itsTablesAreMadeElsewhere() throws IOException {
        Optional<SmallDisk> small = SmallDisk.mount(folder.resolve("disk"), "4m");
        if (small.isEmpty()) {
            Path home = folder.resolve("home");
            fill(home);
            Files.delete(home.resolve("lock"));
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("r-xr-xr-x"));
            reads(home);
            Files.setPosixFilePermissions(home, PosixFilePermissions.fromString("rwxr-xr-x"));
            return;
        }
        try (SmallDisk disk = small.get()) {
            fill(disk.folder().resolve("home"));
            disk.readOnly();
            reads(disk.folder().resolve("home"));
        }
    }

    private static void fill(Path folder) {
        try (TestHome home = TestHome.in(folder)) {
            home.journal().append(Said.many("seen", 30));
        }
    }

    private static void reads(Path folder) {
        try (TestHome home = TestHome.in(folder)) {
            home.views(TALLIES);
            assertThat(TALLIES.times(home.index(), "seen")).isEqualTo(30);
            assertThat(home.index().notices())
                    .singleElement()
                    .asString()
                    .startsWith(
                            "The folder " + folder.resolve("index") + " cannot be written, so the tables are made in ");
        }
    }
}
