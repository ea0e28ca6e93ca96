package wickbench.journal;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.random.RandomGenerator;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;

/** A real home on a machine whose clock somebody sets. */
public record SetHome(HomeFolder real, AtomicReference<Instant> now) implements Home {

    static SetHome at(Path folder, String time) {
        return new SetHome(new HomeFolder(folder), new AtomicReference<>(Instant.parse(time)));
    }

    void set(String time) {
        now.set(Instant.parse(time));
    }

    @Override
    public Path folder() {
        return real.folder();
    }

    @Override
    public InstantSource clock() {
        return now::get;
    }

    @Override
    public RandomGenerator chance() {
        return real.chance();
    }

    @Override
    public SimulatedClock simulate(long seed, Instant start) {
        return real.simulate(seed, start);
    }

    @Override
    public OptionalLong simulatedSeed() {
        return real.simulatedSeed();
    }
}
