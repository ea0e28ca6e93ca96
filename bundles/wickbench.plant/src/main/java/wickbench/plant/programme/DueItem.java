package wickbench.plant.programme;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.site.Sampling;

/**
 * A rule that something made due.
 *
 * @param since when it became due
 * @param by until when it is to be done
 * @param about the changeover or the maintenance; empty for what comes with the days
 * @param samples each with the result that did it, if one did
 */
public record DueItem(
        Rule rule,
        Instant since,
        Instant by,
        DueState state,
        Optional<ChangeMade> change,
        Optional<String> about,
        List<Sample> samples) {
    public DueItem {
        samples = List.copyOf(samples);
    }

    /** What is to be sampled, and the result that did it. */
    public record Sample(Sampling what, Optional<UUID> done) {}

    /** Returns what names it on the command line and between pages: {@code RULE@TIME}. */
    public String key() {
        return rule.id() + "@" + since;
    }

    /** Returns what is still to be sampled. */
    public List<Sampling> missing() {
        return samples.stream()
                .filter(sample -> sample.done().isEmpty())
                .map(Sample::what)
                .toList();
    }
}
