package wickbench.api.index;

import java.util.List;

/**
 * What making the tables once more has shown.
 *
 * @param differences rows that are not what the entries make, up to a thousand
 * @param complete false when the watcher stopped the work
 */
public record IndexVerification(List<Difference> differences, boolean complete) {
    public IndexVerification {
        differences = List.copyOf(differences);
    }

    public boolean holds() {
        return complete && differences.isEmpty();
    }
}
