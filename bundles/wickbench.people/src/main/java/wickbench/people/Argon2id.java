package wickbench.people;

import java.util.Arrays;
import java.util.Base64;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import wickbench.api.authority.Passphrase;

/**
 * Hashes that are dear to guess (RFC 9106), in the usual text form {@code $argon2id$v=19$m=…,t=…,p=…$SALT$HASH}.
 *
 * <p>New ones take 64 MiB and 3 passes (RFC 9106 §4, second recommended option, here in one lane), so that whoever has the file
 * tries less than ten a second on one core. The least that the OWASP Password Storage Cheat Sheet allows, 19 MiB and 2 passes, let
 * through 25 to 30. What was made with other figures is still understood, since the text tells them.
 */
final class Argon2id {
    static final int MEMORY_KIB = 64 * 1024;
    static final int PASSES = 3;
    static final int LANES = 1;

    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final Pattern FORM = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    private Argon2id() {}

    static String hash(Passphrase secret, RandomGenerator chance) {
        byte[] salt = new byte[SALT_BYTES];
        chance.nextBytes(salt);
        byte[] hash = new byte[HASH_BYTES];
        fill(secret, salt, new int[] {MEMORY_KIB, PASSES, LANES}, hash);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=" + LANES + "$" + text.encodeToString(salt) + "$"
                + text.encodeToString(hash);
    }

    /** Tells whether the secret gives this hash; takes as long when it does not. */
    static boolean matches(String kept, Passphrase secret) {
        Matcher parts = FORM.matcher(kept);
        if (!parts.matches()) {
            throw new IllegalStateException("not a hash that is understood here");
        }
        int[] costs = {
            Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3))
        };
        byte[] wanted = Base64.getDecoder().decode(parts.group(5));
        byte[] found = new byte[wanted.length];
        fill(secret, Base64.getDecoder().decode(parts.group(4)), costs, found);
        return java.security.MessageDigest.isEqual(wanted, found);
    }

    private static void fill(Passphrase secret, byte[] salt, int[] costs, byte[] hash) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withSalt(salt)
                .withMemoryAsKB(costs[0])
                .withIterations(costs[1])
                .withParallelism(costs[2])
                .build());
        byte[] bytes = secret.bytes();
        generator.generateBytes(bytes, hash);
        Arrays.fill(bytes, (byte) 0);
    }
}
