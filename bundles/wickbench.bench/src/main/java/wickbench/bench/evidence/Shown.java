package wickbench.bench.evidence;

import java.util.List;
import java.util.Optional;
import wickbench.api.chart.Chart;
import wickbench.api.journal.EntryRef;

/**
 * One piece of evidence, as people look at it.
 *
 * @param title what was reckoned, or that a file is attached
 * @param words what came of it, what it was for, and what it does not say
 * @param reach whether the method can tell that an action level is reached; only of sums that speak of one
 */
public record Shown(EntryRef entry, String title, List<String> words, Optional<Chart> plot, Optional<Reach> reach) {
    public Shown {
        words = List.copyOf(words);
    }
}
