package wickbench.journal.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.words.Words;
import wickbench.journal.HomeBackups;
import wickbench.journal.JournalFolder;
import wickbench.journal.SetHome;
import wickbench.testing.HeardTerminal;

class BackupCommandsTest {
    @TempDir
    Path folder;

    private HomeFolder home;
    private JournalFolder journal;
    private Path backup;
    private HeardTerminal heard = HeardTerminal.ofNobody(false);

    @BeforeEach
    void begin() {
        home = new HomeFolder(folder.resolve("home"));
        journal = JournalFolder.open(home, entries -> {});
        backup = folder.resolve("backup");
        record(1);
    }

    @AfterEach
    void end() {
        journal.close();
    }

    private void record(int number) {
        journal.append(List.of(new Draft(
                new UUID(1, number),
                new PersonId("rivera"),
                "note.written",
                1,
                Json.object().with("n", number))));
    }

    private BackupCommands commands(boolean json) {
        return commands(json, home);
    }

    private BackupCommands commands(boolean json, HomeFolder at) {
        heard = HeardTerminal.ofNobody(json);
        return new BackupCommands(
                at, new HomeBackups(at, () -> journal), Words.of(JournalCommand.class, "journal"), heard);
    }

    @Test
    void a_back_up_says_how_much_it_holds() {
        assertThat(commands(false).backUp(Optional.of(backup))).isZero();
        assertThat(heard.printed()).containsExactly("Backed up 2 entries, verified, in " + backup + ".");
    }

    @Test
    void a_home_is_restored_elsewhere_and_what_is_missing_is_counted() {
        commands(false).backUp(Optional.of(backup));
        record(2);
        journal.checkpoint();
        Path known = home.folder().resolve("journal/station-1/checkpoint");
        HomeFolder other = new HomeFolder(folder.resolve("new"));
        assertThat(commands(true, other).restore(backup, Optional.of(known))).isEqualTo(1);
        assertThat(heard.printed().get(0))
                .contains("\"result\":\"older\"", "the newest 1 are missing", "\"holds\":true");
        HomeFolder third = new HomeFolder(folder.resolve("third"));
        assertThat(commands(false, third).restore(backup, Optional.empty())).isZero();
        assertThat(heard.printed().get(0)).startsWith("Restored 2 entries, as backed up at ");
        assertThat(heard.printed().get(2)).startsWith("Whether more was recorded after the back-up is not known");
        assertThatThrownBy(() -> commands(false, third).restore(backup, Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("holds something already");
    }

    @Test
    void a_home_that_is_open_is_never_restored_into() {
        commands(false).backUp(Optional.of(backup));
        HomeFolder open = new HomeFolder(folder.resolve("open"));
        try (JournalFolder held = JournalFolder.open(open, entries -> {})) {
            assertThat(held.founding()).isEmpty();
            assertThatThrownBy(() -> commands(false, open).restore(backup, Optional.empty()))
                    .isInstanceOf(Refusal.class);
        }
    }

    @Test
    void back_ups_are_made_by_plan() {
        Path safe = folder.resolve("safe");
        assertThat(commands(false).state(Optional.empty(), 1, 14, false)).isZero();
        assertThat(heard.printed())
                .containsExactly("No plan: back-ups are made only when asked for.", "No back-up was ever made.");
        assertThat(commands(false).state(Optional.of(safe), 7, 3, false)).isEqualTo(1);
        assertThat(heard.printed())
                .containsExactly(
                        "Plan: into " + safe + "; days between two: 7; the newest 3 are kept.",
                        "No back-up was ever made.",
                        "A back-up is due.");
        assertThat(commands(true).backUp(Optional.empty())).isZero();
        assertThat(commands(true).state(Optional.empty(), 1, 14, false)).isZero();
        assertThat(heard.printed().get(0)).contains("\"due\":false", "\"keep\":3");
        assertThat(commands(false).state(Optional.empty(), 1, 14, true)).isZero();
        assertThat(heard.printed().get(1)).startsWith("Newest back-up: less than a day ago (");
        assertThatThrownBy(() -> commands(false).state(Optional.of(safe), 0, 1, false))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected 1 to 90 days");
    }

    @Test
    void the_age_of_the_newest_back_up_is_told_in_days() {
        commands(false).backUp(Optional.of(backup));
        for (String[] told : new String[][] {{"25", "a day ago"}, {"49", "2 days ago"}}) {
            HeardTerminal later = HeardTerminal.ofNobody(false);
            Instant shown = home.clock().instant().plus(Duration.ofHours(Long.parseLong(told[0])));
            SetHome then = new SetHome(home, new AtomicReference<>(shown));
            new BackupCommands(
                            then,
                            new HomeBackups(then, () -> journal),
                            Words.of(JournalCommand.class, "journal"),
                            later)
                    .state(Optional.empty(), 1, 14, false);
            assertThat(later.printed().get(1)).contains(told[1]);
        }
    }

    @Test
    void a_home_restored_with_all_that_is_known_ends_well() {
        commands(false).backUp(Optional.of(backup));
        Path known = home.folder().resolve("journal/station-1/checkpoint");
        HomeFolder other = new HomeFolder(folder.resolve("new"));
        assertThat(commands(false, other).restore(backup, Optional.of(known))).isZero();
        assertThat(heard.printed().get(2)).contains("holds all 2 entries of the checkpoint unchanged");
    }
}
