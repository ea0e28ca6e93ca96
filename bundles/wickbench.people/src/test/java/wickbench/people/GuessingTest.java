package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.Refusal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.testing.Meets;

/** Somebody tries passphrases (ASVS 5.0 V6.3.1, 21 CFR 11.300(d)). */
class GuessingTest {
    private static final Duration BETWEEN = Duration.ofMillis(100);

    @TempDir
    Path folder;

    private TestHouse house;

    @BeforeEach
    void open() {
        house = new TestHouse(folder).locked();
    }

    @AfterEach
    void close() {
        house.close();
    }

    @Test
    @Meets("21 CFR 11.10(d)")
    void fiveAreHeardAndThenOneHasToWait() {
        for (int i = 0; i < Attempts.FREE; i++) {
            assertThat(guess(ADA)).isEqualTo("sign-in.wrong");
        }
        assertThat(guess(ADA)).isEqualTo("sign-in.paused");
        assertThat(open(ADA, ADAS)).isEqualTo("sign-in.paused");
        house.pass(Attempts.FIRST_WAIT);
        assertThat(open(ADA, ADAS)).isEqualTo("open");
        assertThat(house.entries(Attempted.GOOD)).hasSize(1);
        assertThat(guess(ADA)).isEqualTo("sign-in.wrong");
    }

    @Test
    void aRestartForgetsNothing() {
        for (int i = 0; i < Attempts.FREE; i++) {
            guess(ADA);
        }
        Instant now = house.now();
        house.close();
        house = new TestHouse(folder, now.plusSeconds(1));
        assertThat(open(ADA, ADAS)).isEqualTo("sign-in.paused");
    }

    @Test
    void theWaitDoublesUpToAnHour() {
        assertThat(Stream.of(5, 6, 7, 10, 11, 12, 1000).map(Attempts::pause).map(Duration::toMinutes))
                .containsExactly(1L, 2L, 4L, 32L, 60L, 60L, 60L);
    }

    /** A million guesses, ten a second: 28 hours. */
    @Test
    @Meets("21 CFR 11.300(d)")
    void aMillionGuessesAreFewHeardAndFewEntries() {
        long before = house.entries().size();
        long heard = 0;
        for (int i = 0; i < 1_000_000; i++) {
            heard += guess(ADA).equals("sign-in.wrong") ? 1 : 0;
            house.pass(BETWEEN);
        }
        // five free, six while the wait doubles, then one an hour
        assertThat(heard).isBetween(30L, 40L);
        List<Json.Obj> bodies = house.entries(Attempted.FAILED).stream()
                .map(entry -> entry.body())
                .toList();
        assertThat(house.entries().size() - before).isEqualTo(heard).isEqualTo(bodies.size());
        assertThat(bodies.get(bodies.size() - 1).get("turned_away")).contains(number(36_000 - 1));
    }

    @Test
    void idsThatNobodyHasShareOneWait() {
        for (int i = 0; i < Attempts.FREE; i++) {
            assertThat(guess(new PersonId("x-" + i))).isEqualTo("sign-in.wrong");
        }
        assertThat(guess(new PersonId("x-99"))).isEqualTo("sign-in.paused");
        assertThat(open(ADA, ADAS)).isEqualTo("open");
    }

    @Test
    void aPinHasItsOwnWait() {
        house.signIn().open(ADA, typed(ADAS));
        house.credentials().pin(ADA, typed("4711"), ADA);
        assertThat(house.signIn().atBench("p-01", Optional.of(typed("4711")))).isEqualTo(ADA);
        for (int i = 0; i < Attempts.FREE; i++) {
            int pin = 5000 + i;
            assertThatThrownBy(() -> house.signIn().atBench("p-01", Optional.of(typed("" + pin))))
                    .hasMessage("That is not the PIN of 'p-01'.");
        }
        assertThatThrownBy(() -> house.signIn().atBench("p-01", Optional.of(typed("4711"))))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("After 5 wrong ones in a row nothing is heard until ");
        assertThat(open(ADA, ADAS)).isEqualTo("open");
    }

    @Test
    @Meets("21 CFR 11.300(e)")
    void aBadgeNamesAPersonButSignsNobodyIn() {
        house.credentials().badge(TestHouse.BO, "0004711", ADA);
        assertThat(house.signIn().atBench("0004711", Optional.empty())).isEqualTo(TestHouse.BO);
        assertThat(house.signIn().sits(TestHouse.BO)).isFalse();
        assertThatThrownBy(() -> house.credentials().badge(ADA, "0004711", ADA))
                .hasMessage("This badge belongs to somebody already.");
    }

    @Test
    void noSecretAndNoNameStandsInTheJournalOrTheIndex() throws IOException {
        // A short number also stands in a digest now and then: twelve digits in a row do not.
        String pin = "902108153347";
        house.signIn().open(ADA, typed(ADAS));
        house.credentials().pin(ADA, typed(pin), ADA);
        house.credentials().badge(ADA, "BADGE-0815", ADA);
        house.close();
        for (String part : List.of("journal", "index")) {
            try (Stream<Path> files = Files.walk(folder.resolve(part))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    String bytes = Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1);
                    assertThat(bytes).as("%s", file).doesNotContain("argon2", "Ada Brook", "herons", pin, "BADGE");
                }
            }
        }
        house = new TestHouse(folder, TestHouse.START.plusSeconds(60));
        assertThat(house.people().find(CY)).isEmpty();
    }

    private String guess(PersonId who) {
        return open(who, "seven grey herons wide");
    }

    private String open(PersonId who, String passphrase) {
        try {
            house.signIn().open(who, typed(passphrase));
            return "open";
        } catch (Refusal refusal) {
            return refusal.code();
        }
    }

    private static Json number(long value) {
        return Json.object().with("n", value).get("n").orElseThrow();
    }
}
