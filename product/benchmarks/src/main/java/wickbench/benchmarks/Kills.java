package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import wickbench.benchmarks.KilledHome.Count;

/**
 * Recorders killed again and again, at any moment of their lives: how much of what they acknowledged is there afterwards.
 *
 * <p>As many at once as there are cores, each in homes of its own.
 */
final class Kills implements Contest {
    private static final double ALL = 1;
    /** Kills in one home; then a new one is founded, so that verifying each time stays short. */
    private static final int A_HOME = 100;

    private final int kills;
    private final Duration patience;
    /** How many there were in the time there is; as many as wanted until it is known. */
    private int done;

    /** @param patience after which no other program is killed; the figure says how many were */
    Kills(int kills, Duration patience) {
        this.kills = kills;
        this.patience = patience;
        done = kills;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "acknowledged entries kept through %,d kills", done);
    }

    @Override
    public Unit unit() {
        return Unit.SHARE;
    }

    @Override
    public int rounds() {
        return 1;
    }

    @Override
    public int warmUps() {
        return 0;
    }

    @Override
    public Field field(Path folder) throws Exception {
        return new Field(
                new Ours(Recorders.ready(Files.createDirectories(folder)), folder),
                List.of(new Baseline(new All(), ALL)));
    }

    private record All() implements Contestant {
        @Override
        public String name() {
            return "all of them";
        }

        @Override
        public double lap() {
            return ALL;
        }
    }

    private final class Ours implements Contestant {
        private final Recorders recorders;
        private final Path folder;

        Ours(Recorders recorders, Path folder) {
            this.recorders = recorders;
            this.folder = folder;
        }

        @Override
        public String name() {
            return "recorders killed at any moment";
        }

        @Override
        public double lap() throws Exception {
            int lanes = Runtime.getRuntime().availableProcessors();
            SplittableRandom chance = new SplittableRandom(kills);
            long end = System.nanoTime() + patience.toNanos();
            AtomicInteger begun = new AtomicInteger();
            List<Callable<Count>> all = new ArrayList<>();
            for (int lane = 0; lane < lanes; lane++) {
                Path own = Files.createDirectories(folder.resolve("lane-" + lane));
                SplittableRandom part = chance.split();
                all.add(() -> {
                    try {
                        return lane(own, part, () -> System.nanoTime() < end && begun.getAndIncrement() < kills);
                    } catch (Exception e) {
                        // what does not hold ends the measurement, for all
                        begun.set(kills);
                        throw e;
                    }
                });
            }
            ExecutorService runners = Executors.newFixedThreadPool(lanes);
            Count sum = Count.NOTHING;
            try {
                for (Future<Count> each : runners.invokeAll(all)) {
                    sum = sum.plus(each.get());
                }
            } finally {
                runners.shutdown();
            }
            done = sum.kills();
            return sum.acknowledged() == 0 ? 0 : 1 - (double) sum.lost() / sum.acknowledged();
        }

        /** Kills in one home after the other, as often as there is another to be killed. */
        private Count lane(Path own, SplittableRandom chance, BooleanSupplier another)
                throws IOException, InterruptedException {
            Count sum = Count.NOTHING;
            boolean more = true;
            for (int number = 0; more; number++) {
                KilledHome home = new KilledHome(recorders, own.resolve("home-" + number));
                for (int kill = 0; more && kill < A_HOME; kill++) {
                    more = another.getAsBoolean();
                    sum = more ? sum.plus(home.kill(chance)) : sum;
                }
                home.end();
            }
            return sum;
        }
    }
}
