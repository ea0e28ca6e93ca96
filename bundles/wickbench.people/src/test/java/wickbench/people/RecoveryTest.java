package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.BO;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.ONCE;
import static wickbench.people.TestHouse.adas;
import static wickbench.people.TestHouse.bos;
import static wickbench.people.TestHouse.typed;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Recovery.Witness;
import wickbench.api.authority.Signature;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/** The way back by a code that lies sealed, where nobody could witness by passphrase (21 CFR 11.300(c)). */
class RecoveryTest {
    private static final Optional<Witness> CY_STANDS_BY = Optional.of(new Witness(CY, Optional.empty()));

    @TempDir
    Path folder;

    private TestHouse house;

    @BeforeEach
    void open() {
        house = new TestHouse(folder);
    }

    @AfterEach
    void close() {
        house.close();
    }

    /** Ada alone has a passphrase; Cy only has an id. */
    private void adaAlone() {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        house.credentials().set(ADA, Optional.empty(), typed(ADAS));
        house.signIn().open(ADA, typed(ADAS));
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.OPERATOR), ADA);
    }

    @Test
    @Meets("21 CFR 11.300(c)")
    void theOnlyOneWithAPassphraseForgotItAndSomebodyWithoutOneStandsBy() {
        adaAlone();
        assertThat(house.recovery().sealed()).isFalse();
        String code = house.recovery().seal(adas());
        assertThat(code).matches("([0-9A-HJKMNP-TV-Z]{5}-){4}[0-9A-HJKMNP-TV-Z]{5}");
        assertThat(house.recovery().sealed()).isTrue();
        assertThat(house.entries().toString()).doesNotContain(code, code.replace("-", ""));

        refused("people.witness", () -> recover(code, Optional.empty()));
        refused("people.witness", () -> recover(code, Optional.of(new Witness(ADA, Optional.empty()))));
        refused("people.unknown", () -> recover(code, Optional.of(new Witness(BO, Optional.empty()))));
        // as it is read from paper
        recover(code.toLowerCase().replace("-", " "), CY_STANDS_BY);

        Entry entry = house.last();
        assertThat(entry.kind()).isEqualTo(Recovered.KIND);
        assertThat(entry.by()).isEqualTo(CY);
        assertThat(entry.body().canonical()).contains("\"watched_by\":\"p-03\"", "\"code\":\"station-1:", "forgotten");
        assertThat(house.recovery().sealed()).isFalse();
        house.credentials().set(ADA, Optional.of(typed(ONCE)), typed("once upon a river"));
        house.signIn().open(ADA, typed("once upon a river"));
        refused("recover.none", () -> recover(code, CY_STANDS_BY));
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void aLostAdministratorIsReplacedByTheOneWhoFetchedTheEnvelope() {
        adaAlone();
        String code = house.recovery().seal(adas());
        house.recovery()
                .byCode(CY, typed(ONCE), typed(code), Optional.of(new Witness(ADA, Optional.empty())), "Ada left");
        house.credentials().set(CY, Optional.of(typed(ONCE)), typed("hills behind hills"));
        house.signIn().open(CY, typed("hills behind hills"));
        house.people().assign(ADA, Set.of(), CY);
        assertThat(house.people().find(CY).orElseThrow().roles()).contains(Role.ADMINISTRATOR);
    }

    @Test
    void whoeverCouldWitnessByPassphraseMust() {
        house.locked(Role.OPERATOR);
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.OPERATOR), ADA);
        String code = house.recovery().seal(adas());
        refused("people.witness", () -> recover(code, CY_STANDS_BY));
        refused(
                "sign-in.wrong",
                () -> recover(code, Optional.of(new Witness(BO, Optional.of(typed("not Bo's at all"))))));
        recover(code, Optional.of(new Witness(BO, Optional.of(bos().passphrase()))));
        assertThat(Signature.under(house.last(), Signature.WITNESS).signed()).isTrue();
    }

    @Test
    void wrongCodesAreEntriesAndSoonNotHeard() {
        adaAlone();
        String code = house.recovery().seal(adas());
        for (int wrong = 0; wrong < Attempts.FREE; wrong++) {
            refused("sign-in.wrong", () -> recover("00000-00000-00000-00000-00000", CY_STANDS_BY));
        }
        refused("sign-in.paused", () -> recover(code, CY_STANDS_BY));
        assertThat(house.entries(Attempted.FAILED)).hasSize(Attempts.FREE);
        assertThat(house.entries(Recovered.KIND)).isEmpty();
        house.pass(Attempts.FIRST_WAIT);
        recover(code, CY_STANDS_BY);
    }

    @Test
    void aNewCodeVoidsTheOneBefore() {
        adaAlone();
        String first = house.recovery().seal(adas());
        house.pass(java.time.Duration.ofMinutes(1));
        String second = house.recovery().seal(adas());
        refused("sign-in.wrong", () -> recover(first, CY_STANDS_BY));
        recover(second, CY_STANDS_BY);
    }

    @Test
    void whoIsAloneInTheHouseNeedsTheCodeOnly() {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        house.credentials().set(ADA, Optional.empty(), typed(ADAS));
        String code = house.recovery().seal(adas());
        recover(code, Optional.empty());
        assertThat(house.last().body().canonical()).doesNotContain("watched_by", "witness");
    }

    private void recover(String code, Optional<Witness> witness) {
        house.recovery().byCode(ADA, typed(ONCE), typed(code), witness, "forgotten");
    }

    private static void refused(String code, org.assertj.core.api.ThrowableAssert.ThrowingCallable act) {
        assertThatThrownBy(act)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(code));
    }
}
