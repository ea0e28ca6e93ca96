package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;

/** One entry at a time: canonical JSON, leaf, on the disk, and its row in the index, before the next. */
final class DurableEntry implements Contest {
    private static final int ENTRIES = 50;
    private static final double OF_RAW = 0.75;
    private static final double OF_H2 = 2;
    private static final double OF_SQLITE = 1;

    @Override
    public String figure() {
        return "one durable entry (leaf, fsync, index row)";
    }

    @Override
    public Unit unit() {
        return Unit.PER_SECOND;
    }

    @Override
    public int rounds() {
        return 61;
    }

    @Override
    public int warmUps() {
        return 120;
    }

    @Override
    public Field field(Path folder) throws Exception {
        Ours ours = new Ours(new Site(folder.resolve("home"), new Notes()));
        String line = ours.line();
        return new Field(
                ours,
                List.of(
                        new Baseline(
                                new RawAppend(Files.createDirectories(folder).resolve("raw"), line, ENTRIES), OF_RAW),
                        new Baseline(SqlCommits.h2(folder.resolve("h2"), line, ENTRIES), OF_H2),
                        new Baseline(SqlCommits.sqlite(folder.resolve("sqlite"), line, ENTRIES), OF_SQLITE)));
    }

    private static final class Ours implements Contestant {
        private final Site site;
        private int number;

        Ours(Site site) {
            this.site = site;
        }

        @Override
        public String name() {
            return "journal and index";
        }

        @Override
        public double lap() throws Exception {
            return Timed.perSecond(ENTRIES, () -> {
                for (int i = 0; i < ENTRIES; i++) {
                    append();
                }
            });
        }

        /** Appends, and asks for the row that must be there before a screen may show the entry as kept. */
        private Entry append() {
            Draft draft = Notes.draft(site.home.chance(), number++);
            Entry entry = site.journal.append(List.of(draft)).get(0);
            EntryRef ref = entry.ref();
            List<Long> found = site.index.read(
                    "notes",
                    rows -> rows.read(
                            "select number from note where station = ? and seq = ?",
                            row -> row.whole("number"),
                            ref.station().value(),
                            ref.seq()));
            if (found.size() != 1) {
                throw new IllegalStateException("no row for " + entry.ref());
            }
            return entry;
        }

        /** Returns a line as it stands in the file, for others to write. */
        String line() {
            return site.journal.line(append().ref()).orElseThrow();
        }

        @Override
        public void close() {
            site.close();
        }
    }
}
