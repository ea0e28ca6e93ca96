package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import wickbench.api.home.HomeFolder;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.journal.StationId;
import wickbench.journal.JournalFolder;

/** From an entry recorded at one of three stations until a listener at another hears of it; the slowest of some, against two seconds. */
final class SeenElsewhere implements Contest {
    private static final double LIMIT_MILLIS = 2_000;
    private static final int ENTRIES = 20;
    private static final long PATIENCE_S = 60;

    @Override
    public String figure() {
        return "an entry seen at another station, slowest of " + ENTRIES;
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 5;
    }

    @Override
    public Field field(Path folder) throws Exception {
        return new Field(Ours.of(folder), List.of(new Baseline(new Limit(LIMIT_MILLIS), 1)));
    }

    private record Ours(HomeFolder home, List<JournalFolder> stations, BlockingQueue<Entry> heard)
            implements Contestant {

        static Ours of(Path folder) throws Exception {
            Path share = Files.createDirectory(folder.resolve("share"));
            HomeFolder home = new HomeFolder(folder.resolve("bench"));
            BlockingQueue<Entry> heard = new ArrayBlockingQueue<>(1_000);
            List<JournalFolder> stations = new ArrayList<>();
            stations.add(joined(home, share, heard, false));
            stations.add(joined(new HomeFolder(folder.resolve("stock")), share, heard, true));
            stations.add(joined(new HomeFolder(folder.resolve("quality")), share, heard, false));
            return new Ours(home, stations, heard);
        }

        private static JournalFolder joined(HomeFolder home, Path share, BlockingQueue<Entry> heard, boolean listens) {
            JournalFolder journal = JournalFolder.open(home, entries -> {
                if (listens) {
                    entries.stream()
                            .filter(entry -> entry.ref().station().value().equals("bench"))
                            .forEach(heard::add);
                }
            });
            String name = home.folder().getFileName().toString();
            journal.found(new Founding(new StationId(name), ZoneOffset.UTC, OptionalLong.empty()));
            journal.others().share(Optional.of(share));
            return journal;
        }

        @Override
        public String name() {
            return "stations";
        }

        @Override
        public double lap() throws Exception {
            double slowest = 0;
            for (int number = 0; number < ENTRIES; number++) {
                Draft draft = Notes.draft(home.chance(), number);
                slowest = Math.max(slowest, Timed.millis(() -> {
                    stations.get(0).append(List.of(draft));
                    await(draft);
                }));
            }
            return slowest;
        }

        private void await(Draft draft) throws InterruptedException {
            boolean seen = false;
            while (!seen) {
                Entry entry = Optional.ofNullable(heard.poll(PATIENCE_S, TimeUnit.SECONDS))
                        .orElseThrow(() -> new IllegalStateException("never seen"));
                seen = entry.id().equals(draft.id());
            }
        }

        @Override
        public void close() {
            stations.forEach(JournalFolder::close);
        }
    }

    private record Limit(double lap) implements Contestant {
        @Override
        public String name() {
            return "the contract";
        }
    }
}
