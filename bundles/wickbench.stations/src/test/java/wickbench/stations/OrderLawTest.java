package wickbench.stations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import wickbench.api.index.ViewState;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.progress.Progress;

/** The law of several stations: whatever the order in which entries came, the tables equal those made anew, row for row. */
class OrderLawTest {
    private static final List<String> STATIONS = List.of("a", "b", "c");
    private static final List<Duration> WRONG =
            List.of(Duration.ZERO, Duration.ofMinutes(-7), Duration.ofDays(3), Duration.ofDays(27_000));

    @Property(tries = 12)
    void the_order_of_arrival_does_not_matter(@ForAll long seed) throws IOException {
        Random chance = new Random(seed);
        Path root = Files.createTempDirectory("wickbench-order");
        try {
            Path share = Files.createDirectory(root.resolve("share"));
            record(root, share, chance);
            List<String> one = arrived(root, share, "r-1", chance);
            List<String> other = arrived(root, share, "r-2", chance);
            assertThat(one).hasSizeGreaterThan(5).isEqualTo(other);
        } finally {
            delete(root);
        }
    }

    /** Lets three stations record by chance, with clocks that differ, seeing one another now and then. */
    static void record(Path root, Path share, Random chance) {
        Acts acts = new Acts(chance);
        List<House> houses = new ArrayList<>();
        for (String station : STATIONS) {
            houses.add(new House(root.resolve(station), station, share, WRONG.get(chance.nextInt(WRONG.size()))));
        }
        try {
            for (int act = 0; act < 40; act++) {
                House house = houses.get(chance.nextInt(houses.size()));
                Draft draft = acts.next();
                Entry entry = house.journal.append(List.of(draft)).get(0);
                if (entry.kind().equals("method.issued")) {
                    acts.issued(entry.ref());
                }
                if (chance.nextInt(3) == 0) {
                    house.exchange();
                }
            }
            houses.forEach(House::exchange);
        } finally {
            houses.forEach(House::close);
        }
    }

    /** Lets everything arrive at a station piece by piece, station by station as chance will, and returns its tables. */
    private static List<String> arrived(Path root, Path share, String name, Random chance) throws IOException {
        try (House reader = reader(root, share, name, chance)) {
            // nothing but that clocks differ, as they were made to
            assertThat(reader.exchange().notices()).allMatch(notice -> notice.startsWith("The clock "));
            List<String> kept = reader.tables();
            assertThat(reader.index.views()).extracting(ViewState::failure).allMatch(failure -> failure.isEmpty());
            reader.index.rebuild(Progress.NONE);
            assertThat(reader.tables()).isEqualTo(kept);
            return kept;
        }
    }

    static House reader(Path root, Path share, String name, Random chance) throws IOException {
        Path shown = Files.createDirectory(root.resolve(name + "-share"));
        Files.copy(share.resolve("wickbench-share.json"), shown.resolve("wickbench-share.json"));
        House reader = new House(root.resolve(name), name, shown, Duration.ZERO);
        Map<String, Integer> places = new HashMap<>();
        STATIONS.forEach(station -> places.put(station, 0));
        while (!all(share, places)) {
            String station = STATIONS.get(chance.nextInt(STATIONS.size()));
            places.merge(station, 1 + chance.nextInt(4), Integer::sum);
            show(share.resolve(station), shown.resolve(station), places.get(station));
            reader.exchange();
            if (chance.nextBoolean()) {
                reader.tables();
            }
        }
        return reader;
    }

    private static boolean all(Path share, Map<String, Integer> places) throws IOException {
        for (String station : STATIONS) {
            if (places.get(station) < checkpoints(share.resolve(station)).size()) {
                return false;
            }
        }
        return true;
    }

    private static List<String> checkpoints(Path station) throws IOException {
        return Files.readAllLines(station.resolve("checkpoints.jsonl"));
    }

    /** Shows the beginning of a station's journal, up to one of its checkpoints. */
    private static void show(Path from, Path to, int checkpoints) throws IOException {
        Files.createDirectories(to);
        Files.write(to.resolve("entries-000000.jsonl"), Files.readAllBytes(from.resolve("entries-000000.jsonl")));
        List<String> lines = checkpoints(from);
        StringBuilder shown = new StringBuilder();
        lines.subList(0, Math.min(checkpoints, lines.size()))
                .forEach(line -> shown.append(line).append('\n'));
        Files.writeString(to.resolve("checkpoints.jsonl"), shown);
    }

    static void delete(Path root) throws IOException {
        try (Stream<Path> paths = Files.walk(root)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
