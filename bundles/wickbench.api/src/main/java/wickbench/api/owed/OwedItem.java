package wickbench.api.owed;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.method.MethodId;

/**
 * One thing that is owed, or was.
 *
 * @param owes the entry because of which: a reading, or a visual check
 * @param step what is to be done next, or what was done last
 * @param callQuality whether quality is to be told, because two strips in a row were invalid
 * @param sample the label on the tube; empty after a visual check
 * @param place where, by the site's name; empty when not stated
 * @param since when it came up
 * @param missing what is still missing of it: places to sample, dilutions as {@code 10} and {@code 100}, the causes to decide on,
 *     as {@code lot.rejected}, or run controls, as {@code blank}
 * @param neighboursNamed re-tests: whether somebody has named the neighbours of the place
 * @param answers entries that did a part of it, oldest first
 * @param doubts a decision: the entries that put the result in doubt and that nobody has decided on
 */
public record OwedItem(
        UUID owes,
        Step step,
        boolean callQuality,
        String sample,
        String place,
        Optional<String> line,
        Optional<MethodId> method,
        Instant since,
        List<String> missing,
        boolean neighboursNamed,
        List<UUID> answers,
        List<UUID> doubts,
        boolean done) {
    public OwedItem {
        missing = List.copyOf(missing);
        answers = List.copyOf(answers);
        doubts = List.copyOf(doubts);
    }
}
