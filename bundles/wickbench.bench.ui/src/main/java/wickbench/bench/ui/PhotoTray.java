package wickbench.bench.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;

/**
 * Photographs that wait until the readings that they show stand in the journal.
 *
 * <p>Outlives the page, which is made anew in another theme or text size, or left and opened again; not the program.
 */
final class PhotoTray {
    private final Map<Shown, List<Path>> waiting = new HashMap<>();

    private record Shown(UUID run, int strip) {}

    /** Photographs of a strip whose reading is recorded. */
    record Ready(StripState strip, List<Path> files) {}

    void add(RunState run, int strip, Path file) {
        waiting.computeIfAbsent(new Shown(run.id(), strip), first -> new ArrayList<>())
                .add(file);
    }

    /** Takes out what can be added now. */
    List<Ready> ready(RunState run) {
        return waiting.isEmpty()
                ? List.of()
                : run.strips().stream()
                        .filter(strip -> strip.recorded().isPresent())
                        .flatMap(strip ->
                                Optional.ofNullable(waiting.remove(new Shown(run.id(), strip.number()))).stream()
                                        .map(files -> new Ready(strip, files)))
                        .toList();
    }
}
