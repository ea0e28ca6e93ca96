package wickbench.people;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import wickbench.api.authority.Passphrase;

/** A code to be written on paper: 25 letters and digits in groups of five, none of which looks like another. */
final class RecoveryCode {
    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 25;
    private static final int GROUP = 5;

    private RecoveryCode() {}

    /** Draws a code; never from the home's chance, which repeats itself in a simulated home. */
    static String drawn() {
        SecureRandom chance = new SecureRandom();
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            code.append(i > 0 && i % GROUP == 0 ? "-" : "").append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    /** Returns what was typed as it is hashed: without blanks and hyphens, small letters made great, O read as 0, I and L as 1. */
    static Passphrase plain(Passphrase typed) {
        String plain = new String(typed.bytes(), StandardCharsets.UTF_8)
                .toUpperCase(java.util.Locale.ROOT)
                .replaceAll("[\\s-]", "")
                .replace('O', '0')
                .replaceAll("[IL]", "1");
        return Passphrase.of(plain.toCharArray());
    }

    static Passphrase plain(String code) {
        return plain(Passphrase.of(code.toCharArray()));
    }
}
