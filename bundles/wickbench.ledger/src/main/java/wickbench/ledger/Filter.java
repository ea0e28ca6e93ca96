package wickbench.ledger;

import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;

/**
 * Which results; all conditions hold together, and an empty one lets everything pass.
 *
 * @param from the first day, in the site's time zone
 * @param to the last day, included
 * @param target what the method detects
 * @param text part of any of the words of a result, in any case of letters
 * @param held only results that hold line and product
 * @param inDoubt only Negatives in doubt that nobody has decided on
 * @param unreviewed only results that nobody has reviewed as they stand
 */
public record Filter(
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<Outcome> outcome,
        Optional<String> place,
        Optional<String> line,
        Optional<String> batch,
        Optional<MethodId> method,
        Optional<String> target,
        Optional<PersonId> operator,
        Optional<LotId> lot,
        Optional<String> text,
        boolean held,
        boolean inDoubt,
        boolean unreviewed) {
    public static final Filter ALL = new Filter(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            false);

    /** Returns this filter with other days, both included. */
    public Filter days(Optional<LocalDate> first, Optional<LocalDate> last) {
        return new Filter(
                first,
                last,
                outcome,
                place,
                line,
                batch,
                method,
                target,
                operator,
                lot,
                text,
                held,
                inDoubt,
                unreviewed);
    }

    public Filter withOutcome(Optional<Outcome> other) {
        return new Filter(
                from, to, other, place, line, batch, method, target, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withPlace(Optional<String> other) {
        return new Filter(
                from, to, outcome, other, line, batch, method, target, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withLine(Optional<String> other) {
        return new Filter(
                from, to, outcome, place, other, batch, method, target, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withBatch(Optional<String> other) {
        return new Filter(
                from, to, outcome, place, line, other, method, target, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withMethod(Optional<MethodId> other) {
        return new Filter(
                from, to, outcome, place, line, batch, other, target, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withTarget(Optional<String> other) {
        return new Filter(
                from, to, outcome, place, line, batch, method, other, operator, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withOperator(Optional<PersonId> other) {
        return new Filter(
                from, to, outcome, place, line, batch, method, target, other, lot, text, held, inDoubt, unreviewed);
    }

    public Filter withLot(Optional<LotId> other) {
        return new Filter(
                from,
                to,
                outcome,
                place,
                line,
                batch,
                method,
                target,
                operator,
                other,
                text,
                held,
                inDoubt,
                unreviewed);
    }

    public Filter withText(Optional<String> other) {
        return new Filter(
                from, to, outcome, place, line, batch, method, target, operator, lot, other, held, inDoubt, unreviewed);
    }

    public Filter onlyHeld(boolean only) {
        return new Filter(
                from, to, outcome, place, line, batch, method, target, operator, lot, text, only, inDoubt, unreviewed);
    }

    public Filter onlyInDoubt(boolean only) {
        return new Filter(
                from, to, outcome, place, line, batch, method, target, operator, lot, text, held, only, unreviewed);
    }

    public Filter onlyUnreviewed(boolean only) {
        return new Filter(
                from, to, outcome, place, line, batch, method, target, operator, lot, text, held, inDoubt, only);
    }
}
