package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.BO;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.typed;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.SecretWatch.Notice.Ending;
import wickbench.api.authority.SecretWatch.Notice.Guessed;
import wickbench.api.check.Refusal;
import wickbench.people.profile.Profiled;
import wickbench.testing.Meets;

/** Passphrases that the profile lets age, and what is told of secrets before somebody asks (21 CFR 11.300(b), (d)). */
class AgingTest {
    private static final LocalDate SET_ON = LocalDate.of(2026, 3, 2);

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
    void withoutAFigureNoneAges() {
        house.profiles().issue(Profiled.keeping(2), ADA, Optional.of(typed(ADAS)));
        house.pass(Duration.ofDays(4000));
        house.signIn().open(ADA, typed(ADAS));
        house.people().enrol(CY, "Cy Ferran", Set.of(), ADA);
        assertThat(house.watch().now()).isEmpty();
    }

    @Test
    @Meets("21 CFR 11.300(b)")
    void anAgedPassphraseSignsAndOpensNothingButANewOne() {
        house.profiles().issue(Profiled.aging(30), ADA, Optional.of(typed(ADAS)));
        house.pass(Duration.ofDays(30));
        house.signIn().open(ADA, typed(ADAS));
        house.people().enrol(CY, "Cy Ferran", Set.of(), ADA);
        house.pass(Duration.ofDays(1));
        house.signIn().open(ADA, typed(ADAS));
        aged(() -> house.people().assign(CY, Set.of(), ADA));
        aged(() -> house.profiles().issue(Profiled.aging(60), ADA, Optional.of(typed(ADAS))));
        house.credentials().set(ADA, Optional.of(typed(ADAS)), typed("once upon a river"));
        house.profiles().issue(Profiled.aging(60), ADA, Optional.of(typed("once upon a river")));
    }

    @Test
    void whatEndsSoonIsToldEarlyAndTheFirstFirst() {
        house.profiles().issue(Profiled.aging(30), ADA, Optional.of(typed(ADAS)));
        house.pass(Duration.ofDays(15));
        assertThat(house.watch().now()).isEmpty();
        house.pass(Duration.ofDays(1));
        house.credentials().set(ADA, Optional.of(typed(ADAS)), typed("once upon a river"));
        assertThat(house.watch().now()).containsExactly(new Ending(BO, SET_ON.plusDays(30)));
    }

    @Test
    @Meets("21 CFR 11.300(d)")
    void guessingIsToldWhileItIsLockedOut() {
        for (int wrong = 0; wrong < Attempts.FREE; wrong++) {
            assertThatThrownBy(() -> house.signIn().open(BO, typed("this is not Bo's")))
                    .isInstanceOf(Refusal.class);
        }
        assertThat(house.watch().now())
                .containsExactly(
                        new Guessed(Optional.of(BO), Attempts.FREE, house.now().plus(Attempts.FIRST_WAIT)));
        house.pass(Attempts.FIRST_WAIT);
        assertThat(house.watch().now()).isEmpty();
    }

    private static void aged(org.assertj.core.api.ThrowableAssert.ThrowingCallable act) {
        assertThatThrownBy(act)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo("sign-in.aged"))
                .hasMessageContaining("held until 2026-04-01");
    }
}
