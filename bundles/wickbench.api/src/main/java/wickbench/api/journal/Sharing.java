package wickbench.api.journal;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a station stands with the others of its site.
 *
 * @param share the shared folder; empty when this station works alone
 * @param cutOff since when the folder could not be reached; empty while it can, and before it was tried
 * @param published how many entries of this station are there for the others
 * @param stations the others, by name
 * @param waits of which stations something is known to be in the folder that is not here whole, as while a sync program copies; in words
 * @param notices what does not fit: another key, a second writer under one name, files that do not belong there; in words
 */
public record Sharing(
        Optional<Path> share,
        Optional<Instant> cutOff,
        long published,
        List<StationState> stations,
        List<String> waits,
        List<String> notices) {
    public Sharing {
        stations = List.copyOf(stations);
        waits = List.copyOf(waits);
        notices = List.copyOf(notices);
    }
}
