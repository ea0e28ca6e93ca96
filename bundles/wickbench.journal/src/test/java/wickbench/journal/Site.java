package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.random.RandomGenerator;
import wickbench.api.home.Home;
import wickbench.api.home.HomeFolder;
import wickbench.api.home.SimulatedClock;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.Sharing;
import wickbench.api.journal.StationId;

/** Stations of one site with one shared folder, each in a home of its own; they exchange when told to, and by themselves. */
final class Site implements AutoCloseable {
    private final Path root;
    private final List<Machine> machines = new ArrayList<>();

    Site(Path root) {
        this.root = root;
        try {
            Files.createDirectories(root.resolve("share"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    Path share() {
        return root.resolve("share");
    }

    /** A machine with one home. */
    final class Machine {
        private final Path folder;
        private final List<Entry> heard = new CopyOnWriteArrayList<>();
        private JournalFolder journal;
        private Optional<Instant> clock = Optional.empty();

        private Machine(Path folder) {
            this.folder = folder;
            machines.add(this);
            open();
        }

        Path folder() {
            return folder;
        }

        JournalFolder journal() {
            return journal;
        }

        /** Entries of others that a listener heard of. */
        List<Entry> heard() {
            return heard;
        }

        /** Opens the home with a clock that shows another time. */
        void open(Instant shown) {
            clock = Optional.of(shown);
            open();
        }

        private void open() {
            journal = JournalFolder.open(home(), heard::addAll);
        }

        private Home home() {
            HomeFolder real = new HomeFolder(folder);
            return clock.<Home>map(shown -> new Shown(real, InstantSource.fixed(shown)))
                    .orElse(real);
        }

        void close() {
            journal.close();
            machines.remove(this);
        }

        void reopen() {
            journal.close();
            open();
        }

        void reopenClosed() {
            open();
        }

        Sharing exchange() {
            return journal.others().exchange();
        }

        void note(int number) {
            journal.append(List.of(Recorded.note(number)));
        }

        long size(String station) {
            return journal.size(new StationId(station));
        }

        List<Entry> entries(String station) {
            List<Entry> entries = new ArrayList<>();
            journal.read(new StationId(station), 0, entries::add);
            return entries;
        }

        List<Entry> entries(String station, String kind) {
            return entries(station).stream()
                    .filter(entry -> entry.kind().equals(kind))
                    .toList();
        }
    }

    /** A home whose clock shows what it is told to. */
    private record Shown(Home home, InstantSource clock) implements Home {
        @Override
        public Path folder() {
            return home.folder();
        }

        @Override
        public RandomGenerator chance() {
            return home.chance();
        }

        @Override
        public SimulatedClock simulate(long seed, Instant start) {
            return home.simulate(seed, start);
        }

        @Override
        public OptionalLong simulatedSeed() {
            return home.simulatedSeed();
        }
    }

    /** Founds a station that shares. */
    Machine station(String name) {
        Machine machine = machine(name);
        machine.journal().found(founding(name));
        machine.journal().others().share(Optional.of(share()));
        return machine;
    }

    static Founding founding(String name) {
        return new Founding(new StationId(name), ZoneOffset.UTC, OptionalLong.empty());
    }

    Machine machine(String folder) {
        return new Machine(root.resolve(folder));
    }

    /** Copies a machine's disk as it is; whoever opens the copy is another machine. */
    void copyDisk(Machine machine, String folder) {
        Recorded.copy(machine.folder(), root.resolve(folder));
    }

    /** Takes the shared folder away from everybody. */
    void cut() {
        move(share(), root.resolve("cut"));
    }

    void mend() {
        move(root.resolve("cut"), share());
    }

    private static void move(Path from, Path to) {
        try {
            Files.move(from, to);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Lets every machine exchange until nothing new can come. */
    void settle() {
        for (int round = 0; round < 3; round++) {
            machines.forEach(Machine::exchange);
        }
    }

    /** Lets every machine exchange until something holds; fails when it does not within a time long enough for any machine. */
    void settleUntil(BooleanSupplier holds) {
        long patience = System.nanoTime() + 60_000_000_000L;
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() > patience) {
                throw new AssertionError("never came");
            }
            settle();
        }
    }

    @Override
    public void close() {
        List.copyOf(machines).forEach(Machine::close);
    }
}
