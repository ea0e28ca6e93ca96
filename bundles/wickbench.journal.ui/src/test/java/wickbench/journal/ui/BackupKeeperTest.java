package wickbench.journal.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.BackupPlan;
import wickbench.api.backup.Backups;
import wickbench.shell.Due;
import wickbench.testing.Meets;

class BackupKeeperTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir
    private Path folder;

    private TestHouse house;
    private Backups backups;
    private BackupKeeper keeper;

    @BeforeEach
    void found() {
        house = new TestHouse(folder.resolve("home"));
        house.record(0, 2);
        backups = house.doors().backups();
        keeper = new BackupKeeper(backups);
    }

    @AfterEach
    void close() throws InterruptedException {
        keeper.end();
        house.close();
    }

    private static void await(BooleanSupplier so) throws InterruptedException {
        for (long waited = 0; !so.getAsBoolean(); waited += 20) {
            assertThat(waited).isLessThan(PATIENCE.toMillis());
            Thread.sleep(20);
        }
    }

    @Test
    void without_a_plan_nothing_is_made_and_nothing_is_due() {
        assertThat(keeper.due()).isEmpty();
        assertThat(backups.state().last()).isEmpty();
    }

    @Test
    void a_back_up_that_is_due_is_made_and_nobody_is_bothered() throws InterruptedException {
        backups.plan(Optional.of(new BackupPlan(folder.resolve("safe"), 1, 3)));
        assertThat(keeper.due()).isEmpty();
        await(() -> backups.state().last().isPresent());
        assertThat(keeper.due()).isEmpty();
        assertThat(folder.resolve("safe").toFile().list()).hasSize(1);
    }

    @Test
    @Meets("EU GMP Annex 11 7.2")
    void one_that_fails_is_told_until_it_is_made() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        backups.plan(Optional.of(new BackupPlan(file, 1, 3)));
        keeper.due();
        await(() -> !keeper.due().isEmpty());
        List<Due> due = keeper.due();
        assertThat(due).singleElement().satisfies(item -> {
            assertThat(item.mark().word()).isEqualTo("Back-up overdue: none yet");
            assertThat(item.page()).isEqualTo("journal");
        });
        Files.delete(file);
        for (int minute = 0; minute < 60; minute++) {
            keeper.due();
        }
        await(() -> backups.state().last().isPresent());
        assertThat(keeper.due()).isEmpty();
    }
}
