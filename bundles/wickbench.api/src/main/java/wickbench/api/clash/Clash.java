package wickbench.api.clash;

import java.util.List;
import wickbench.api.journal.EntryRef;

/**
 * Decisions on one subject that stand against one another.
 *
 * @param subject as in {@link Decision}
 * @param decisions those that no later decision on the subject had seen, by station; at least two, with at least two claims
 */
public record Clash(String subject, List<EntryRef> decisions) {
    public Clash {
        decisions = List.copyOf(decisions);
    }
}
