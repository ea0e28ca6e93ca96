package wickbench.api.home;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.words.Words;

/** A home in a folder, real unless it is simulated before it is founded. Nothing is touched on the disk here. */
public final class HomeFolder implements Home {

    /** The clock of the house; every other class asks its home. */
    private static final InstantSource SYSTEM = InstantSource.system();

    private final Path folder;
    private volatile State state;

    private record State(InstantSource clock, RandomGenerator chance, OptionalLong seed) {}

    public HomeFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
        state = new State(SYSTEM, new SecureRandom(), OptionalLong.empty());
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public InstantSource clock() {
        return state.clock();
    }

    @Override
    public RandomGenerator chance() {
        return state.chance();
    }

    @Override
    public OptionalLong simulatedSeed() {
        return state.seed();
    }

    @Override
    public SimulatedClock simulate(long seed, Instant start) {
        if (founded()) {
            throw new Refusal("home.founded", Words.of(HomeFolder.class, "home").get("founded", folder));
        }
        SimulatedClock clock = new SimulatedClock(start);
        state = new State(clock, new SplittableRandom(seed), OptionalLong.of(seed));
        return clock;
    }

    private boolean founded() {
        Path journal = folder.resolve("journal");
        if (!Files.isDirectory(journal)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(journal)) {
            return inside.findAny().isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
