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
 * <p>What was made at another cost is still understood, since the text tells it.
 */
final class Argon2id {
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final Pattern FORM = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    private Argon2id() {}

    static String hash(Passphrase secret, HashCost cost, RandomGenerator chance) {
        byte[] salt = new byte[SALT_BYTES];
        chance.nextBytes(salt);
        byte[] hash = new byte[HASH_BYTES];
        fill(secret, salt, cost, hash);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + cost.memoryKib() + ",t=" + cost.passes() + ",p=" + cost.lanes() + "$"
                + text.encodeToString(salt) + "$" + text.encodeToString(hash);
    }

    /** Tells whether the secret gives this hash; takes as long when it does not. */
    static boolean matches(String kept, Passphrase secret) {
        Matcher parts = FORM.matcher(kept);
        if (!parts.matches()) {
            throw new IllegalStateException("not a hash that is understood here");
        }
        HashCost cost = new HashCost(
                Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)), Integer.parseInt(parts.group(3)));
        byte[] wanted = Base64.getDecoder().decode(parts.group(5));
        byte[] found = new byte[wanted.length];
        fill(secret, Base64.getDecoder().decode(parts.group(4)), cost, found);
        return java.security.MessageDigest.isEqual(wanted, found);
    }

    private static void fill(Passphrase secret, byte[] salt, HashCost cost, byte[] hash) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withSalt(salt)
                .withMemoryAsKB(cost.memoryKib())
                .withIterations(cost.passes())
                .withParallelism(cost.lanes())
                .build());
        byte[] bytes = secret.bytes();
        generator.generateBytes(bytes, hash);
        Arrays.fill(bytes, (byte) 0);
    }
}
