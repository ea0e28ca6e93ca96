package wickbench.api.journal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The journal at a glance.
 *
 * @param folder where it is kept
 * @param founding empty before the first entry
 * @param size entries of this station
 * @param root Merkle root over them
 * @param keyFingerprint SHA-256 of this station's public key
 * @param checkpoint the newest one
 * @param notices what went wrong and was set aside, in words; empty when all is well
 * @param readOnly why nothing can be recorded; empty when it can
 */
public record JournalStatus(
        Path folder,
        Optional<Founding> founding,
        long size,
        Hash root,
        Optional<Hash> keyFingerprint,
        Optional<Checkpoint> checkpoint,
        List<String> notices,
        Optional<String> readOnly) {
    public JournalStatus {
        notices = List.copyOf(notices);
    }
}
