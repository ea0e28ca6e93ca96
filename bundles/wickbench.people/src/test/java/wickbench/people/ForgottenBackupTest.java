package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.home.HomeFolder;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;
import wickbench.journal.HomeBackups;

/** A home is restored from back-ups that were made before and after somebody was forgotten. */
class ForgottenBackupTest {
    @TempDir
    Path folder;

    private TestHouse house;

    @BeforeEach
    void forget() {
        house = new TestHouse(folder.resolve("home")).locked(Role.REVIEWER);
        backUp("before");
        house.pass(Duration.ofDays(4_000));
        house.signIn().open(TestHouse.ADA, TestHouse.typed(TestHouse.ADAS));
        house.credentials().forget(TestHouse.BO, TestHouse.ADA, Optional.of(TestHouse.typed(TestHouse.ADAS)));
        backUp("after");
        house.close();
    }

    private void backUp(String name) {
        backups().backUp(folder.resolve(name), Progress.NONE);
    }

    private HomeBackups backups() {
        return new HomeBackups(
                new HomeFolder(folder.resolve("home")), () -> (wickbench.journal.JournalFolder) house.journal());
    }

    private void restore(String name) {
        backups().restore(folder.resolve(name), folder.resolve("anew"), Optional.empty(), Progress.NONE);
        house = new TestHouse(folder.resolve("anew"), TestHouse.START.plus(Duration.ofDays(4_001)));
    }

    private static List<String> files(Path home) throws IOException {
        try (Stream<Path> all = Files.walk(home.resolve("people"))) {
            return all.filter(Files::isRegularFile)
                    .map(file -> home.relativize(file).toString())
                    .filter(file -> file.contains(TestHouse.BO.value()))
                    .sorted()
                    .toList();
        }
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    void who_was_forgotten_before_the_back_up_stays_forgotten_and_files_that_come_back_go_again() throws IOException {
        restore("after");
        Path anew = folder.resolve("anew");
        assertThat(files(anew)).isEmpty();
        List<String> old = files(folder.resolve("before/home"));
        assertThat(old).isNotEmpty();
        for (String file : old) {
            Files.createDirectories(anew.resolve(file).getParent());
            Files.copy(folder.resolve("before/home").resolve(file), anew.resolve(file));
        }
        assertThat(house.people().find(TestHouse.BO).orElseThrow().name()).isEmpty();
        assertThat(house.people().find(TestHouse.ADA)).isPresent();
        assertThat(files(anew)).isEmpty();
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void who_was_forgotten_after_the_back_up_is_known_again_until_forgotten_again() throws IOException {
        restore("before");
        assertThat(house.people().find(TestHouse.BO).orElseThrow().name()).contains("Bo Lind");
        house.signIn().open(TestHouse.ADA, TestHouse.typed(TestHouse.ADAS));
        house.credentials().forget(TestHouse.BO, TestHouse.ADA, Optional.of(TestHouse.typed(TestHouse.ADAS)));
        assertThat(house.people().find(TestHouse.BO).orElseThrow().name()).isEmpty();
        assertThat(files(folder.resolve("anew"))).isEmpty();
        assertThat(house.entries("journal.restored")).hasSize(1);
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
    }
}
