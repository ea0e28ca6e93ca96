package wickbench.people;

/**
 * What a new hash takes to make, and so each guess at it.
 *
 * @param memoryKib memory, in KiB
 * @param passes over that memory
 * @param lanes that could be filled at once
 */
public record HashCost(int memoryKib, int passes, int lanes) {
    /**
     * What is kept in homes: 64 MiB and 3 passes (RFC 9106 §4, second recommended option, here in one lane), so that whoever has the
     * file tries less than ten a second on one core. The least that the OWASP Password Storage Cheat Sheet allows, 19 MiB and 2
     * passes, let through 25 to 30.
     */
    public static final HashCost USUAL = new HashCost(64 * 1024, 3, 1);

    /** The least there is (RFC 9106 §3.1): for the homes of tests, at which nobody guesses. */
    public static final HashCost LEAST = new HashCost(8, 1, 1);
}
