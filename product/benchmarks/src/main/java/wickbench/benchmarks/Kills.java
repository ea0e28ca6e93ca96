package wickbench.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.journal.JournalFolder;

/** A recorder killed again and again, at any moment of its life: how much of what it acknowledged is there afterwards. */
final class Kills implements Contest {
    private static final double ALL = 1;
    /** Kills in one home; then a new one is founded, so that verifying each time stays short. */
    private static final int A_HOME = 100;

    private static final int LATEST_MS = 120;

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
        return new Field(new Ours(Files.createDirectories(folder)), List.of(new Baseline(new All(), ALL)));
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
        private final Path folder;

        Ours(Path folder) {
            this.folder = folder;
        }

        @Override
        public String name() {
            return "a recorder killed at any moment";
        }

        @Override
        public double lap() throws Exception {
            SplittableRandom chance = new SplittableRandom(kills);
            long acknowledged = 0;
            long lost = 0;
            long before = 0;
            long end = System.nanoTime() + patience.toNanos();
            done = 0;
            for (int kill = 0; kill < kills && System.nanoTime() < end; kill++) {
                Path home = folder.resolve("home-" + kill / A_HOME);
                before = kill % A_HOME == 0 ? 0 : before;
                long said = killed(home, chance);
                long kept = kept(home);
                acknowledged += Math.max(0, said - before);
                lost += Math.max(0, Math.max(said, before) - kept);
                before = kept;
                done++;
            }
            return acknowledged == 0 ? 0 : 1 - (double) lost / acknowledged;
        }

        /** Kills a recorder and returns the last size that it acknowledged. */
        private long killed(Path home, SplittableRandom chance) throws IOException, InterruptedException {
            Process recorder = Recorder.start(home);
            try (BufferedReader said = recorder.inputReader(StandardCharsets.UTF_8)) {
                for (int lines = chance.nextInt(4); lines > 0; lines--) {
                    said.readLine();
                }
                Thread.sleep(chance.nextInt(LATEST_MS));
                // through its handle, which leaves what it said to be read
                recorder.toHandle().destroyForcibly();
                List<String> all = said.lines().toList();
                recorder.waitFor();
                return all.stream()
                        .filter(line -> line.matches("[0-9]+"))
                        .mapToLong(Long::parseLong)
                        .reduce(0, Math::max);
            }
        }

        private long kept(Path home) {
            try (JournalFolder journal = JournalFolder.open(new HomeFolder(home), entries -> {})) {
                Verification verified = journal.verify(Progress.NONE);
                if (!verified.holds()) {
                    throw new IllegalStateException("does not hold after a kill: " + verified.findings());
                }
                return verified.entries();
            }
        }
    }
}
