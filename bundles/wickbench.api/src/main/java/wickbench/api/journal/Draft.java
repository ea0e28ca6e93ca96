package wickbench.api.journal;

import java.util.UUID;
import java.util.random.RandomGenerator;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * An entry about to be appended; the journal adds place, time and chain.
 *
 * @param id unique for ever
 * @param by who records it
 */
public record Draft(UUID id, PersonId by, String kind, int v, Json.Obj body) {
    private static final long VARIANT = 0x8000000000000000L;

    /** Returns an id drawn by chance (RFC 9562, version 4). */
    public static UUID randomId(RandomGenerator chance) {
        return versioned(chance.nextLong(), chance.nextLong(), 4);
    }

    /** Returns the id that follows from what is to be recorded (RFC 9562, version 8: SHA-256 of kind and content). */
    public static UUID contentId(String kind, Json.Obj content) {
        byte[] hash = Hash.ofContent(kind + "\n" + content.canonical()).bytes();
        java.nio.ByteBuffer bits = java.nio.ByteBuffer.wrap(hash);
        return versioned(bits.getLong(), bits.getLong(), 8);
    }

    private static UUID versioned(long high, long low, int version) {
        return new UUID(high & ~0xF000L | (long) version << 12, low & ~0xC000000000000000L | VARIANT);
    }
}
