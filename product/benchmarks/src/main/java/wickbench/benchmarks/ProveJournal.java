package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.EntryProof;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.StationId;

/** A consistency proof from any older size to the newest checkpoint, made and checked, against a fixed limit. */
final class ProveJournal implements Contest {
    private static final StationId STATION = new StationId("bench-1");
    private static final double LIMIT_MILLIS = 0.050;
    private static final int PROOFS = 5_000;
    private static final int SIZES = 1_000;

    private final int entries;

    ProveJournal(int entries) {
        this.entries = entries;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "proof among %,d entries, made and checked", entries);
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 7;
    }

    @Override
    public Field field(Path folder) {
        Site site = new Site(folder.resolve("home"));
        site.fill(entries, 50_000, number -> Notes.draft(site.home.chance(), number));
        return new Field(Ours.of(site, entries), List.of(new Baseline(new Limit(LIMIT_MILLIS), 1)));
    }

    /** Holds older roots, as a report carries them, against the journal. */
    private record Ours(Site site, List<String> checkpoints) implements Contestant {

        /** Asks for the roots of sizes anywhere beforehand; the first asking makes the hashes that are kept. */
        static Ours of(Site site, int entries) {
            Proofs proofs = site.journal.proofs();
            SplittableRandom chance = new SplittableRandom(9162);
            return new Ours(
                    site,
                    chance.longs(SIZES, 1, entries)
                            .mapToObj(size -> typed(size, root(proofs, size)))
                            .toList());
        }

        private static Hash root(Proofs proofs, long size) {
            EntryProof proof = proofs.prove(new EntryRef(STATION, 0), OptionalLong.of(size));
            return proof.root();
        }

        private static String typed(long size, Hash root) {
            return STATION + " " + size + " " + root;
        }

        @Override
        public String name() {
            return "journal compare";
        }

        @Override
        public double lap() throws Exception {
            Proofs proofs = site.journal.proofs();
            return Timed.millis(() -> {
                        for (int i = 0; i < PROOFS; i++) {
                            Comparison made = proofs.compare(checkpoints.get(i % SIZES));
                            if (!made.holds()) {
                                throw new IllegalStateException(made.text());
                            }
                        }
                    })
                    / PROOFS;
        }

        @Override
        public void close() {
            site.close();
        }
    }

    private record Limit(double lap) implements Contestant {
        @Override
        public String name() {
            return "fixed limit";
        }
    }
}
