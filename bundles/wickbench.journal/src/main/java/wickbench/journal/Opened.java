package wickbench.journal;

import java.util.List;
import java.util.Optional;
import wickbench.proof.Frontier;

/**
 * What opening a station has found.
 *
 * @param founded empty when there is no whole first entry
 * @param seal the newest checkpoint
 */
record Opened(Optional<Founded> founded, Kept kept, Frontier frontier, Optional<Seal> seal, List<SetAside> setAside) {
    Opened {
        setAside = List.copyOf(setAside);
    }

    /** Returns a station whose first entry is known and not yet kept. */
    static Opened nothing(Founded founded) {
        return new Opened(Optional.of(founded), Kept.NOTHING, new Frontier(), Optional.empty(), List.of());
    }
}
