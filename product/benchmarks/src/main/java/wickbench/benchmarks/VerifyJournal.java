package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import wickbench.api.journal.Verification;
import wickbench.api.progress.Progress;

/** Reading all entries again and proving them: every leaf, the chain, the checkpoints, the root. */
final class VerifyJournal implements Contest {
    private static final double OF_RAW = 0.5;
    private final int entries;
    private final int sealedEach;

    /** Takes a journal with a checkpoint for each so many entries: checking a signature takes as long as some thousand leaves. */
    VerifyJournal(int entries, int sealedEach) {
        this.entries = entries;
        this.sealedEach = sealedEach;
    }

    @Override
    public String figure() {
        return String.format(java.util.Locale.ROOT, "verify %,d entries, one signature each %,d", entries, sealedEach);
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 5;
    }

    @Override
    public Field field(Path folder) throws Exception {
        Site site = new Site(folder.resolve("home"));
        site.fill(entries, sealedEach, number -> Notes.draft(site.home.chance(), number));
        site.journal.checkpoint();
        String root = site.journal.status().root().hex();
        RawMerkle raw = new RawMerkle(folder.resolve("home/journal/bench-1"), root);
        return new Field(new Ours(site), List.of(new Baseline(raw, OF_RAW)));
    }

    private record Ours(Site site) implements Contestant {
        @Override
        public String name() {
            return "journal verify";
        }

        @Override
        public double lap() throws Exception {
            long size = site.journal.status().size();
            return Timed.perSecond(size, () -> {
                Verification verified = site.journal.verify(Progress.NONE);
                if (!verified.findings().isEmpty() || !verified.complete()) {
                    throw new IllegalStateException("not proved: " + verified.findings());
                }
            });
        }

        @Override
        public void close() {
            site.close();
        }
    }
}
