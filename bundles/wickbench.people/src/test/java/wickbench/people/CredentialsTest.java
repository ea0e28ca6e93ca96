package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.BO;
import static wickbench.people.TestHouse.BOS;
import static wickbench.people.TestHouse.CY;
import static wickbench.people.TestHouse.ONCE;
import static wickbench.people.TestHouse.adas;
import static wickbench.people.TestHouse.bos;
import static wickbench.people.TestHouse.typed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.authority.Credentials.Signing;
import wickbench.api.authority.SignIn.Secret;
import wickbench.api.authority.Signature;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Entry;
import wickbench.api.person.Role;
import wickbench.api.progress.Progress;
import wickbench.people.profile.Profiled;
import wickbench.testing.Meets;

/** Passphrases given, forgotten, recovered; and people forgotten. */
class CredentialsTest {
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

    @Test
    void aHomeKeepsWhatIsDearToGuess() {
        SecretFiles asInstalled = new SecretFiles(new HomeFolder(folder), house.roster());
        assertThat(asInstalled.hash(typed("seven grey herons"))).startsWith("$argon2id$v=19$m=65536,t=3,p=1$");
    }

    @Test
    void theFirstPassphraseOfAllIsAnAdministratorsAndFromThenOnItIsAsked() {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        house.people().enrol(BO, "Bo Lind", Set.of(Role.OPERATOR), ADA);
        assertThat(house.signIn().asked()).isFalse();
        refused("people.role", () -> house.credentials().set(BO, Optional.empty(), typed(BOS)));
        house.credentials().set(ADA, Optional.empty(), typed(ADAS));
        assertThat(house.signIn().asked()).isTrue();
        refused("sign-in.none", () -> house.credentials().set(BO, Optional.empty(), typed(BOS)));
        refused("sign-in.needed", () -> house.credentials().set(ADA, Optional.empty(), typed("another one of mine")));
        refused("sign-in.needed", () -> house.people().enrol(CY, "Cy Ferran", Set.of(), ADA));
    }

    @Test
    @Meets("21 CFR 11.300(c)")
    void aPhraseForOnceIsGoodForOnesOwnPassphraseAndForADay() {
        house.locked();
        house.credentials()
                .reset(BO, typed(ONCE), adas(), Optional.of(new Signing(cyWithKey(), typed("hills behind hills"))));
        refused("sign-in.once", () -> house.signIn().open(BO, typed(ONCE)));
        refused("sign-in.wrong", () -> house.signIn().open(BO, typed(BOS)));
        house.pass(HouseSignIn.ONCE);
        refused(
                "sign-in.over",
                () -> house.credentials().set(BO, Optional.of(typed(ONCE)), typed("once upon a river")));
    }

    @Test
    @Meets("21 CFR 11.200(a)(3)")
    void whoHadAPassphraseNeedsAWitnessForAnother() {
        house.locked();
        refused("people.witness", () -> house.credentials().reset(BO, typed(ONCE), adas(), Optional.empty()));
        refused("people.witness", () -> house.credentials().reset(BO, typed(ONCE), adas(), Optional.of(bos())));
        refused("people.witness", () -> house.credentials().reset(BO, typed(ONCE), adas(), Optional.of(adas())));
        Signing witness = new Signing(cyWithKey(), typed("hills behind hills"));
        house.credentials().reset(BO, typed(ONCE), adas(), Optional.of(witness));
        Entry entry = house.last();
        assertThat(entry.kind()).isEqualTo(FileChanged.PASSPHRASE);
        assertThat(Signature.under(entry).signed()).isTrue();
        assertThat(Signature.under(entry, Signature.WITNESS).signed()).isTrue();
        house.credentials().set(BO, Optional.of(typed(ONCE)), typed("once upon a river"));
        house.signIn().open(BO, typed("once upon a river"));
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    void aLostAdministratorIsReplacedBeforeAWitnessAndLoudly() {
        house.locked(Role.OPERATOR);
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.REVIEWER), ADA);
        refused("recover.acts", () -> house.recovery().byWitness(CY, typed(ONCE), bos(), "Ada left"));
        house.pass(Keeping.LOST.plusSeconds(1));
        refused("people.witness", () -> house.recovery().byWitness(BO, typed(ONCE), bos(), "Ada left"));
        refused(
                "sign-in.wrong",
                () -> house.recovery()
                        .byWitness(CY, typed(ONCE), new Signing(BO, typed("not Bo's words")), "Ada left"));
        house.recovery().byWitness(CY, typed(ONCE), bos(), "Ada left");
        Entry entry = house.last();
        assertThat(entry.kind()).isEqualTo(Recovered.KIND);
        assertThat(entry.body().canonical()).contains("Ada left", "station-1");
        assertThat(Signature.under(entry, Signature.WITNESS).signed()).isTrue();
        house.credentials().set(CY, Optional.of(typed(ONCE)), typed("once upon a river"));
        house.signIn().open(CY, typed("once upon a river"));
        house.people().assign(ADA, Set.of(), CY);
        assertThat(house.people().find(CY).orElseThrow().roles()).contains(Role.ADMINISTRATOR, Role.REVIEWER);
    }

    @ParameterizedTest
    @CsvSource({
        "short words, 'expected 12 to 256 characters; several words with spaces do well'",
        "aaaaaaaaaaaabbb, expected at least 5 different characters",
        "I am Ada Brook here, must not contain your own id or name",
        "my id is p-01 you see, must not contain your own id or name"
    })
    void weakOnesAreRefused(String phrase, String words) {
        house.people().enrol(ADA, "Ada Brook", Set.of(Role.ADMINISTRATOR), ADA);
        assertThatThrownBy(() -> house.credentials().set(ADA, Optional.empty(), typed(phrase)))
                .isInstanceOf(BadInput.class)
                .hasMessage("passphrase: " + words);
        assertThat(house.signIn().secretOf(ADA)).isEqualTo(Secret.NONE);
    }

    @Test
    @Meets("21 CFR 117.315(a)(1), (b)")
    void nobodyIsForgottenWhileRecordsMustCarryTheName() throws IOException {
        house.locked();
        house.profiles().issue(Profiled.keeping(3), ADA, Optional.of(typed(ADAS)));
        refused("people.kept", () -> house.credentials().forget(BO, ADA, Optional.of(typed(ADAS))));
        house.pass(Duration.ofDays(365 * 3));
        refused("people.kept", () -> house.credentials().forget(BO, ADA, Optional.of(typed(ADAS))));
        house.pass(Duration.ofDays(3));
        Path files = folder.resolve("people/p-02");
        Path copy = folder.resolve("copy");
        Files.createDirectories(copy);
        Path first;
        try (var list = Files.list(files)) {
            first = list.findFirst().orElseThrow();
        }
        Files.copy(first, copy.resolve(first.getFileName()));
        house.credentials().forget(BO, ADA, Optional.of(typed(ADAS)));
        assertThat(files).doesNotExist();
        assertThat(house.people().all()).extracting(person -> person.id()).containsExactly(ADA);
        assertThat(house.people().find(BO).orElseThrow().name()).isEmpty();
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
        refused("people.taken", () -> house.people().enrol(BO, "Bo Lind", Set.of(), ADA));
        // a restored copy brings the file back
        Files.createDirectories(files);
        Files.copy(copy.resolve(first.getFileName()), files.resolve(first.getFileName()));
        assertThat(house.people().find(BO).orElseThrow().name()).isEmpty();
        assertThat(files).doesNotExist();
    }

    @Test
    void theLastAdministratorIsNotForgotten() {
        house.locked();
        house.pass(Duration.ofDays(800));
        refused("people.last", () -> house.credentials().forget(ADA, ADA, Optional.of(typed(ADAS))));
    }

    private wickbench.api.person.PersonId cyWithKey() {
        house.people().enrol(CY, "Cy Ferran", Set.of(Role.REVIEWER), ADA);
        house.credentials().reset(CY, typed(ONCE), adas(), Optional.empty());
        house.credentials().set(CY, Optional.of(typed(ONCE)), typed("hills behind hills"));
        return CY;
    }

    private static void refused(String code, org.assertj.core.api.ThrowableAssert.ThrowingCallable act) {
        assertThatThrownBy(act)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(code));
    }
}
