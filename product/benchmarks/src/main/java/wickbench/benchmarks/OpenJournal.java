package wickbench.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import wickbench.api.home.HomeFolder;
import wickbench.journal.JournalFolder;

/** Opening a journal of many years, against opening one of a day: it reads what came after the newest checkpoint only. */
final class OpenJournal implements Contest {
    private static final double OF_A_DAY = 1.5;
    private static final int A_DAY = 1_000;
    /** Opened so often a lap, since once takes a few milliseconds. */
    private static final int TIMES = 20;

    private final int entries;

    OpenJournal(int entries) {
        this.entries = entries;
    }

    @Override
    public String figure() {
        return String.format(Locale.ROOT, "open a journal of %,d entries", entries);
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 11;
    }

    @Override
    public int warmUps() {
        return 5;
    }

    @Override
    public Field field(Path folder) {
        return new Field(
                filled(folder.resolve("years"), entries),
                List.of(new Baseline(filled(folder.resolve("day"), A_DAY), OF_A_DAY)));
    }

    private static Contestant filled(Path home, int entries) {
        try (Site site = new Site(home)) {
            site.fill(entries, number -> Notes.draft(site.home.chance(), number));
        }
        return new Opened(home, entries);
    }

    private record Opened(Path home, int entries) implements Contestant {
        @Override
        public String name() {
            return String.format(Locale.ROOT, "%,d entries", entries);
        }

        @Override
        public double lap() throws Exception {
            double all = Timed.millis(() -> {
                for (int time = 0; time < TIMES; time++) {
                    JournalFolder.open(new HomeFolder(home), written -> {}).close();
                }
            });
            return all / TIMES;
        }
    }
}
