package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.api.progress.Progress;
import wickbench.ledger.services.LedgerView;

/** Throwing the index away and making it again from the journal, counted in rows of its tables. */
final class RebuildIndex implements Contest {
    private static final double OF_RAW = 0.5;
    /** The result, and the place of its id. */
    private static final int ROWS_A_RESULT = 2;

    private final int results;

    RebuildIndex(int results) {
        this.results = results;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "rebuild the index of %,d results, rows", results);
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 3;
    }

    @Override
    public Field field(Path folder) throws Exception {
        Path home = folder.resolve("home");
        try (Site site = new Site(home, new LedgerView())) {
            site.fill(results, number -> Readings.draft(site.home.chance(), number));
            site.index.catchUp(Progress.NONE);
        }
        BulkInsert raw = BulkInsert.copying(IndexFile.below(home), folder.resolve("raw"));
        return new Field(new Ours(new Site(home, new LedgerView()), results), List.of(new Baseline(raw, OF_RAW)));
    }

    private record Ours(Site site, int results) implements Contestant {
        @Override
        public String name() {
            return "index rebuild";
        }

        @Override
        public double lap() throws Exception {
            return Timed.perSecond((long) ROWS_A_RESULT * results, () -> site.index.rebuild(Progress.NONE));
        }

        @Override
        public void close() {
            site.close();
        }
    }
}
