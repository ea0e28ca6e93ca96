package wickbench.people;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.OptionalLong;
import java.util.random.RandomGenerator;
import wickbench.api.home.Home;
import wickbench.api.home.SimulatedClock;

/** A real home but for its clock, so that it can be opened a second time. */
record SimulatedHome(Home real, SimulatedClock time) implements Home {
    @Override
    public Path folder() {
        return real.folder();
    }

    @Override
    public InstantSource clock() {
        return time;
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
        return OptionalLong.empty();
    }
}
