package wickbench.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.progress.Progress;
import wickbench.ledger.services.LedgerView;

/** A home with so many results, made once for all figures that look through it, and deleted when the program ends. */
final class FilledLedger {
    private final int results;
    private Optional<Path> home = Optional.empty();

    FilledLedger(int results) {
        this.results = results;
    }

    int results() {
        return results;
    }

    /** Opens it as the program does; one opens it at a time. */
    Site open() {
        return new Site(home.orElseThrow(), new LedgerView());
    }

    /** @param beside the folder of the contest that asks first */
    void make(Path beside) {
        if (home.isEmpty()) {
            Path folder = beside.resolveSibling("ledger-" + results);
            delete(folder);
            home = Optional.of(folder);
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
            try (Site site = open()) {
                site.fill(results, number -> Readings.draft(site.home.chance(), number));
                site.index.catchUp(Progress.NONE);
            }
        }
    }

    private static void delete(Path folder) {
        try {
            Folders.delete(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
