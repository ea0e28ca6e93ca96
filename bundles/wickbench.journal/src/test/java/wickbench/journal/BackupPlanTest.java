package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.backup.BackupPlan;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/** Back-ups that nobody has to think of. */
class BackupPlanTest {
    private static final Duration DAY = Duration.ofDays(1);

    @TempDir
    Path folder;

    private SimulatedClock clock;
    private JournalFolder journal;
    private HomeBackups backups;
    private Path safe;

    @BeforeEach
    void record() {
        HomeFolder home = new HomeFolder(folder.resolve("home"));
        clock = home.simulate(7, Instant.parse("2026-03-01T06:00:00Z"));
        journal = Recorded.open(home);
        journal.append(Recorded.notes(0, 3));
        backups = new HomeBackups(home, () -> journal);
        safe = folder.resolve("safe");
    }

    @AfterEach
    void close() {
        journal.close();
    }

    private void later(Duration time) {
        clock.moveTo(clock.instant().plus(time));
    }

    @Test
    void without_a_plan_nothing_is_due_and_nothing_is_made() {
        assertThat(backups.state().due()).isFalse();
        assertThatThrownBy(() -> backups.backUpByPlan(Progress.NONE))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("No plan for back-ups");
    }

    @Test
    @Meets({"21 CFR 11.10(c)", "ISO/IEC 17025 8.4.1, 8.4.2"})
    void a_plan_is_due_at_once_and_then_each_time_its_days_are_over() {
        backups.plan(Optional.of(new BackupPlan(safe, 2, 5)));
        assertThat(backups.state().due()).isTrue();
        assertThat(backups.state().age()).isEmpty();
        backups.backUpByPlan(Progress.NONE);
        assertThat(backups.state().due()).isFalse();
        later(DAY);
        assertThat(backups.state().due()).isFalse();
        assertThat(backups.state().age()).contains(DAY);
        later(DAY);
        assertThat(backups.state().due()).isTrue();
        backups.plan(Optional.empty());
        assertThat(backups.state().due()).isFalse();
        assertThat(backups.state().last()).isPresent();
    }

    @Test
    void only_the_newest_are_kept_and_nothing_else_is_touched() throws Exception {
        backups.plan(Optional.of(new BackupPlan(safe, 1, 2)));
        Files.createDirectories(safe.resolve("holiday pictures"));
        for (int i = 0; i < 4; i++) {
            backups.backUpByPlan(Progress.NONE);
            later(DAY);
        }
        assertThat(safe.toFile().list())
                .containsExactlyInAnyOrder(
                        "holiday pictures", "station-1-20260303T060000Z", "station-1-20260304T060000Z");
        assertThat(backups.state().last().orElseThrow().folder().getFileName())
                .hasToString("station-1-20260304T060000Z");
    }

    @Test
    void a_plan_has_sensible_bounds() {
        for (int[] wrong : List.of(new int[] {0, 1}, new int[] {91, 1}, new int[] {1, 0}, new int[] {1, 1001})) {
            assertThatThrownBy(() -> new BackupPlan(safe, wrong[0], wrong[1]))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void back_ups_of_another_station_in_the_same_folder_are_not_counted() throws Exception {
        HomeFolder other = new HomeFolder(folder.resolve("other"));
        try (JournalFolder stock = Recorded.open(other)) {
            stock.found(Site.founding("stock"));
            HomeBackups theirs = new HomeBackups(other, () -> stock);
            theirs.backUpInto(safe, Progress.NONE);
        }
        backups.plan(Optional.of(new BackupPlan(safe, 1, 1)));
        backups.backUpByPlan(Progress.NONE);
        later(DAY);
        backups.backUpByPlan(Progress.NONE);
        assertThat(safe.toFile().list())
                .hasSize(2)
                .contains("station-1-20260302T060000Z")
                .anyMatch(name -> name.startsWith("stock-"));
    }

    @Test
    void a_clock_that_was_set_back_makes_no_back_up_younger_than_new() {
        SetHome home = SetHome.at(folder.resolve("set"), "2026-03-01T06:00:00Z");
        try (JournalFolder recorded = Recorded.open(home)) {
            recorded.append(Recorded.notes(0, 1));
            HomeBackups made = new HomeBackups(home, () -> recorded);
            made.plan(Optional.of(new BackupPlan(safe, 1, 5)));
            made.backUpByPlan(Progress.NONE);
            home.set("2026-02-01T06:00:00Z");
            assertThat(made.state().age()).contains(Duration.ZERO);
            assertThat(made.state().due()).isFalse();
        }
    }
}
