package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wickbench.people.TestHouse.ADA;
import static wickbench.people.TestHouse.ADAS;
import static wickbench.people.TestHouse.typed;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.authority.Act;
import wickbench.api.authority.Signature;
import wickbench.api.authority.Signature.Standing;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.profile.Profiles.IssuedProfile;
import wickbench.api.progress.Progress;
import wickbench.people.profile.Profiled;
import wickbench.testing.Meets;

/** Signatures (21 CFR 11.50, 11.70, 11.200). */
class SigningTest {
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
    @Meets("21 CFR 11.50")
    void tellsWhoWhenAndWhatForAndTheSealHolds() {
        IssuedProfile issued = house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed(ADAS)));
        assertThat(issued.signed()).isTrue();
        Entry entry = house.journal().entry(issued.entry()).orElseThrow();
        assertThat(Signature.under(entry)).isInstanceOfSatisfying(Standing.Signed.class, signed -> {
            assertThat(signed.signature().by()).isEqualTo(ADA);
            assertThat(signed.signature().at()).isEqualTo(house.now());
            assertThat(signed.signature().meaning()).isEqualTo(Act.ISSUE_PROFILE);
        });
        assertThat(house.journal().verify(Progress.NONE).holds()).isTrue();
    }

    @Test
    @Meets("21 CFR 11.200(a)(1)")
    void isAskedEachTimeAlsoWithinASitting() {
        assertThat(house.signIn().sits(ADA)).isTrue();
        refused("sign.needed", () -> house.profiles().issue(Profiled.plain(), ADA, Optional.empty()));
        refused(
                "sign-in.wrong",
                () -> house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed("wrong words"))));
        assertThat(house.profiles().all()).isEmpty();
    }

    @Test
    @Meets("21 CFR 11.70")
    void fitsNoOtherEntry() {
        house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed(ADAS)));
        Json signature = house.last().body().get(Signature.MEMBER).orElseThrow();
        Json.Obj same = house.last().body();
        Json.Obj other = same.with("profile", Json.object().with("plant", "elsewhere"));
        assertThat(Signature.under(appended(same))).isEqualTo(new Standing.Foreign());
        assertThat(Signature.under(appended(other))).isEqualTo(new Standing.Foreign());
        assertThat(Signature.under(appended(Json.object().with(Signature.MEMBER, signature))))
                .isEqualTo(new Standing.Foreign());
        assertThat(Signature.under(appended(Json.object().with(Signature.MEMBER, "Ada"))))
                .isEqualTo(new Standing.Foreign());
        assertThat(Signatures.all(house.journal(), Progress.NONE))
                .filteredOn(Signatures.Checked::foreign)
                .hasSize(4);
    }

    @Test
    @Meets({"21 CFR 11.70", "EU GMP Annex 11 14"})
    void cannotBeTurnedIntoAnotherPersonsOrMeaningsOrTimes() {
        house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed(ADAS)));
        Entry entry = house.last();
        Json.Obj signature = (Json.Obj) entry.body().get(Signature.MEMBER).orElseThrow();
        for (List<String> change : List.of(
                List.of("by", "p-02"), List.of("meaning", "issue-method"), List.of("at", "2026-03-03T06:00:00.000Z"))) {
            Json.Obj changed = entry.body().with(Signature.MEMBER, signature.with(change.get(0), change.get(1)));
            assertThat(Signature.under(with(entry, changed))).as("%s", change).isEqualTo(new Standing.Foreign());
        }
        assertThat(Signature.under(with(entry, entry.body())).signed()).isTrue();
    }

    @Test
    @Meets("21 CFR 11.200(a)(1)")
    void aDeskThatSomebodyWalkedAwayFromSignsNobodysAct() {
        house.signIn().open(ADA, typed(ADAS));
        house.pass(Sittings.IDLE.minusSeconds(1));
        house.signIn().seen(ADA);
        house.pass(Sittings.IDLE.minusSeconds(1));
        assertThat(house.signIn().sits(ADA)).isTrue();
        house.pass(Duration.ofSeconds(1));
        assertThat(house.signIn().sits(ADA)).isFalse();
        house.signIn().seen(ADA);
        assertThat(house.signIn().sits(ADA)).isFalse();
        refused("sign-in.needed", () -> house.people().assign(TestHouse.BO, java.util.Set.of(), ADA));
    }

    @Test
    void aSittingIsNotCarriedIntoAnotherProgram() {
        house.signIn().open(ADA, typed(ADAS));
        house.close();
        house = new TestHouse(folder, TestHouse.START.plusSeconds(1));
        assertThat(house.signIn().sits(ADA)).isFalse();
    }

    @Test
    void theProfileMayAskForMore() {
        house.profiles().issue(Profiled.plain(), ADA, Optional.of(typed(ADAS)));
        Draft draft = new Draft(UUID.randomUUID(), ADA, "method.issued", 1, Json.object());
        refused("sign.needed", () -> house.authority().authorise(Act.ISSUE_METHOD, draft));
        assertThat(house.authority()
                        .authorise(Act.ISSUE_METHOD, draft, Optional.of(typed(ADAS)))
                        .body()
                        .get(Signature.MEMBER))
                .isPresent();
    }

    private Entry appended(Json.Obj body) {
        house.journal().append(List.of(new Draft(UUID.randomUUID(), ADA, "elsewhere.made", 1, body)));
        return house.last();
    }

    private static Entry with(Entry entry, Json.Obj body) {
        return new Entry(
                entry.ref(),
                entry.id(),
                entry.prev(),
                entry.at(),
                entry.offset(),
                entry.by(),
                entry.kind(),
                entry.v(),
                body,
                entry.leaf());
    }

    private static void refused(String code, org.assertj.core.api.ThrowableAssert.ThrowingCallable act) {
        assertThatThrownBy(act)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.code()).isEqualTo(code));
    }
}
