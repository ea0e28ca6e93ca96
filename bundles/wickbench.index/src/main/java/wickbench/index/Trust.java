package wickbench.index;

import java.util.Optional;
import wickbench.index.SqlFailure.Damaged;

/**
 * Whether all that was read from one file is what was written there.
 *
 * <p>H2 takes some read errors for the end of what there is and goes on with less, so it is not left to H2 to say so. Once lost,
 * trust does not come back: nothing more is read, and no answer leaves the index.
 */
final class Trust {
    private volatile Optional<ForeignBytes> lost = Optional.empty();

    /** Notes that a block is foreign, and returns what to throw. */
    ForeignBytes lose(ForeignBytes found) {
        lost = Optional.of(found);
        return found;
    }

    /** Throws what was found, for H2. */
    void refuseRead() throws ForeignBytes {
        if (lost.isPresent()) {
            throw lost.get();
        }
    }

    /** Refuses an answer, for the index to mend the file. */
    void refuseAnswer() {
        lost.ifPresent(found -> {
            throw new Damaged(found);
        });
    }
}
