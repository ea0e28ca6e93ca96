package wickbench.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A history that a second writer under a station's name has laid into the shared folder. */
final class Branch {
    private Branch() {}

    /** Returns the newest checkpoint of a branch that the station's key has signed and that covers what is there. */
    static Optional<Seal> seal(StationFolder branch, Founded founded) throws IOException {
        Optional<Seal> seal = Ending.of(branch.checkpoints(), Long.MAX_VALUE)
                .line()
                .flatMap(line -> Seal.parse(new String(line, StandardCharsets.UTF_8)))
                .filter(found -> found.holds(founded.key(), branch.station()));
        return seal.isPresent() && Stretch.whole(branch, founded, seal.get()) ? seal : Optional.empty();
    }
}
