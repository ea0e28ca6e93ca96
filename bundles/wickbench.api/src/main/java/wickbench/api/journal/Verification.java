package wickbench.api.journal;

import java.util.List;

/**
 * What reading everything again has shown.
 *
 * @param entries entries read
 * @param checkpoints signed checkpoints compared
 * @param root Merkle root found
 * @param findings what does not hold, first place first; empty when everything does
 * @param complete false when the watcher stopped the work
 */
public record Verification(long entries, long checkpoints, Hash root, List<Broken> findings, boolean complete) {
    public Verification {
        findings = List.copyOf(findings);
    }

    public boolean holds() {
        return complete && findings.isEmpty();
    }

    /**
     * One thing that does not hold.
     *
     * @param where the entry or file
     * @param code what sort of break, for example {@code chain.broken}
     * @param text what was found and what was expected
     */
    public record Broken(String where, String code, String text) {}
}
