package wickbench.api.home;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The folder of one station, with the clock and the chance that belong to it.
 *
 * <p>There is at most one home in a running program. Services that keep something in it depend on this service and touch
 * the folder only when first used.
 */
@ProviderType
public interface Home {

    Path folder();

    /** Tells whether there is a journal; a question to a home without one must leave nothing in it. */
    default boolean isBegun() {
        return Files.isDirectory(folder().resolve("journal"));
    }

    /** Returns the only clock of the house. */
    InstantSource clock();

    /** Returns the only source of chance; cryptographically strong in a real home. */
    RandomGenerator chance();

    /**
     * Turns this home, not yet founded, into one with a simulated clock and repeatable chance.
     *
     * <p>The journal writes this into its first entry, for good. A founded real home refuses.
     *
     * @return the clock, to be set by the caller and never backwards
     * @throws wickbench.api.check.Refusal when the home was founded already
     */
    SimulatedClock simulate(long seed, Instant start);

    /** Returns the seed given to {@link #simulate} in this run of the program; empty in a real home. */
    OptionalLong simulatedSeed();
}
