package wickbench.people;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.people.TestHouse.typed;

import java.security.SecureRandom;
import org.junit.jupiter.api.Test;
import wickbench.testing.Meets;

class Argon2idTest {
    /** Reference implementation phc-winner-argon2, src/test.c: m = 2^16 KiB, t = 2, p = 1, "password", "somesalt". */
    private static final String KNOWN =
            "$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc";

    @Test
    void givesTheHashThatOthersGive() {
        assertThat(Argon2id.matches(KNOWN, typed("password"))).isTrue();
        assertThat(Argon2id.matches(KNOWN, typed("passwore"))).isFalse();
    }

    @Test
    void costsWhatRfc9106Recommends() {
        String hash = Argon2id.hash(typed("seven grey herons"), HashCost.USUAL, new SecureRandom());
        assertThat(hash).matches("\\$argon2id\\$v=19\\$m=65536,t=3,p=1\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}");
        assertThat(Argon2id.matches(hash, typed("seven grey herons"))).isTrue();
        assertThat(Argon2id.matches(hash, typed("seven grey heron"))).isFalse();
    }

    @Test
    @Meets("21 CFR 11.300(a)")
    void saltsEachHashAnew() {
        SecureRandom chance = new SecureRandom();
        assertThat(Argon2id.hash(typed("the same words"), HashCost.LEAST, chance))
                .isNotEqualTo(Argon2id.hash(typed("the same words"), HashCost.LEAST, chance));
    }

    @Test
    void takesEveryKeyboardsFormOfALetter() {
        String hash = Argon2id.hash(typed("caf\u00e9 at the corner"), HashCost.LEAST, new SecureRandom());
        assertThat(Argon2id.matches(hash, typed("cafe\u0301 at the corner"))).isTrue();
    }
}
