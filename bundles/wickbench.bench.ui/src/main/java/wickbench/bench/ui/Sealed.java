package wickbench.bench.ui;

import java.util.Optional;
import wickbench.api.journal.Hash;
import wickbench.api.reading.ReadingDoor.Kept;

/** A reading in the journal with the hash of its entry's line. */
record Sealed(Kept kept, Optional<Hash> leaf) {
    private static final int SHORT = 12;

    String words() {
        String hash = leaf.map(some -> some.hex().substring(0, SHORT)).orElse("");
        return BenchUiWords.get(kept.added() ? "kept.added" : "kept.before", kept.ref(), hash);
    }
}
