package wickbench.ledger.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.clash.Clash;
import wickbench.api.owed.OwedItem;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Standing.Tested;
import wickbench.ledger.acts.Subject;

/**
 * What bears on a release.
 *
 * @param lines those that the subject was made on
 * @param plans their plans, as far as there are any
 * @param results of the subject, newest first
 * @param full the results by which its points stand, their controls, those of its cases and, of a batch, all: as the journal has them
 * @param controls the newest run control of each sort that belongs to such a result, by result
 * @param clashes open ones on what the release rests on, or that speak of its lines
 * @param lacking why entries of other stations may be missing
 */
record Gathered(
        Subject subject,
        List<String> lines,
        List<ReleasePlan> plans,
        List<ResultRow> results,
        List<Tested> points,
        Map<UUID, ResultDetail> full,
        Map<UUID, Controls> controls,
        List<Case> cases,
        List<OwedItem> owed,
        List<Outside> outside,
        List<Clash> clashes,
        List<No> lacking) {

    /** The newest controls of a kit on the day of a result. */
    record Controls(Optional<ResultRow> lowPositive, Optional<ResultRow> blank) {
        Stream<ResultRow> both() {
            return Stream.concat(lowPositive.stream(), blank.stream());
        }
    }

    /** Returns the Negatives on which a release would rest. */
    List<ResultRow> rests() {
        return points.stream()
                .filter(Tested::good)
                .flatMap(point -> point.result().stream())
                .toList();
    }
}
