package wickbench.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;
import wickbench.benchmarks.Recorder.Said;

/**
 * A home in which one recorder after the other is killed.
 *
 * <p>What a kill left is looked at in a copy, so that the next recorder, and not the one who looks, has to set it right, and may be
 * killed while it does.
 */
final class KilledHome {
    /** How a process ends that was killed by signal 9. */
    private static final int KILLED = 128 + 9;

    private static final long LATEST_NANOS = 60_000_000L;
    /** As long as no recorder got so far. */
    private static final long START_NANOS = 500_000_000L;

    private final Recorders recorders;
    private final Path home;
    private final Path copy;
    /** How long the last recorder that came so far took until all was open. */
    private long start = START_NANOS;
    /** All that was acknowledged in this home and was there after each kill until now. */
    private final Set<Said> kept = new HashSet<>();

    /** @param folder where nothing is yet */
    KilledHome(Recorders recorders, Path folder) throws IOException {
        this.recorders = recorders;
        home = Files.createDirectory(folder);
        copy = folder.resolveSibling(folder.getFileName() + "-seen");
    }

    /** What recorders acknowledged before they were killed, and how much of that is not there. */
    record Count(int kills, long acknowledged, long lost) {
        static final Count NOTHING = new Count(0, 0, 0);

        Count plus(Count other) {
            return new Count(kills + other.kills, acknowledged + other.acknowledged, lost + other.lost);
        }
    }

    /** Kills a recorder, and looks for all that it acknowledged; the whole journal must hold. */
    Count kill(SplittableRandom chance) throws IOException, InterruptedException {
        List<Said> said = killed(chance);
        kept.addAll(said);
        Folders.copy(home, copy);
        try (Site site = new Site(copy, new Notes())) {
            Verification verified = site.journal.verify(Progress.NONE);
            if (!verified.holds()) {
                throw new IllegalStateException("does not hold after a kill: " + verified.findings());
            }
            return new Count(1, said.size(), lost(site, said));
        } finally {
            Folders.delete(copy);
        }
    }

    /** Kills a recorder at any moment; returns what it acknowledged. */
    private List<Said> killed(SplittableRandom chance) throws IOException, InterruptedException {
        long started = System.nanoTime();
        Process recorder = recorders.start(home, chance.nextBoolean());
        try (BufferedReader said = recorder.inputReader(StandardCharsets.UTF_8)) {
            // every fourth while it starts, the next from when it is open, the others while it records
            int lines = chance.nextInt(4);
            for (int line = 0; line < lines; line++) {
                boolean open = Recorder.OPEN.equals(said.readLine());
                start = open ? System.nanoTime() - started : start;
            }
            LockSupport.parkNanos(chance.nextLong(lines == 0 ? start : LATEST_NANOS));
            // through its handle, which leaves what it said to be read
            recorder.toHandle().destroyForcibly();
            List<String> all = said.lines().toList();
            if (recorder.waitFor() != KILLED) {
                throw new IllegalStateException("a recorder ended by itself, in " + home);
            }
            return Said.all(all);
        }
    }

    /** Looks in the journal for all that was ever acknowledged here, and in the index for what was last. */
    private long lost(Site site, List<Said> said) {
        StationId station = site.journal.founding().orElseThrow().station();
        Set<Said> missing = new HashSet<>(kept);
        site.journal.read(station, 0, entry -> {
            missing.remove(new Said(entry.ref().seq(), entry.id()));
            return true;
        });
        said.stream()
                .filter(one -> !site.index.find(one.id()).equals(Optional.of(new EntryRef(station, one.seq()))))
                .forEach(missing::add);
        kept.removeAll(missing);
        return missing.size();
    }

    /** Holds all tables of the index against the journal, after the last of the kills, and removes the home. */
    void end() throws IOException {
        try (Site site = new Site(home, new Notes())) {
            if (!site.index.verify(Progress.NONE).holds()) {
                throw new IllegalStateException("the index is not what the journal says, in " + home);
            }
        }
        Folders.delete(home);
    }
}
