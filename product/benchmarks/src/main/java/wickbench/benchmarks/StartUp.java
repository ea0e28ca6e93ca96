package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** From the start of the process to a window that can be used, against a window with nothing in it. */
final class StartUp implements Contest {
    private static final double OF_BARE = 1.5;
    private static final int RESULTS = 2_000;

    @Override
    public String figure() {
        return String.format(java.util.Locale.ROOT, "start to first usable screen, %,d results", RESULTS);
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
    public Field field(Path folder) throws Exception {
        Path home = folder.resolve("home");
        try (Site site = new Site(home)) {
            site.fill(RESULTS, number -> Readings.draft(site.home.chance(), number));
        }
        Path product = Path.of(System.getProperty("wickbench.product"));
        Path work = Files.createDirectories(folder.resolve("work"));
        return new Field(
                Started.product(product, home, work), List.of(new Baseline(Started.bare(product, work), OF_BARE)));
    }
}
