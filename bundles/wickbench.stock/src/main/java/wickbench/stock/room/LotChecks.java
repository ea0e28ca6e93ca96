package wickbench.stock.room;

import java.time.Instant;
import java.util.List;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RunControl;
import wickbench.stock.Kit.CheckRule;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.Use;

/**
 * The rule by which a delivery is fit.
 *
 * <p>Enough valid blanks and low positives, at most so many of them wrong, at most so many strips Invalid. A blank must be
 * Negative, a low positive Positive.
 */
final class LotChecks {
    private LotChecks() {}

    /** Returns the strips read to check a lot since its newest delivery. */
    static List<Use> readings(Lot lot, Shelves shelves) {
        Instant since = shelves.read(List.<Told>of(), events -> events.lot(lot.id())).stream()
                .filter(told -> told.event() instanceof LotEvent.Received)
                .map(told -> told.event().at())
                .max(Instant::compareTo)
                .orElse(lot.received());
        return shelves.uses(
                "lot = ? and lot_check and control is not null and taken >= ? order by taken, station, seq",
                lot.id().value(),
                since);
    }

    static LotCheck judge(CheckRule rule, List<Use> strips) {
        List<Use> valid =
                strips.stream().filter(use -> use.outcome() != Outcome.INVALID).toList();
        int blanks = count(valid, RunControl.BLANK);
        int lows = count(valid, RunControl.LOW_POSITIVE);
        int wrong = (int) valid.stream().filter(LotChecks::wrong).count();
        int invalid = strips.size() - valid.size();
        boolean bad = wrong > rule.mostWrong() || invalid > rule.mostInvalid();
        if (!bad && (blanks < rule.blanks() || lows < rule.lowPositives())) {
            throw Said.refused("check.too-few", rule.blanks(), rule.lowPositives(), blanks, lows);
        }
        return new LotCheck(
                blanks,
                lows,
                wrong,
                invalid,
                !bad,
                strips.stream().map(Use::result).toList());
    }

    private static int count(List<Use> valid, RunControl control) {
        return (int) valid.stream().filter(use -> is(use, control)).count();
    }

    private static boolean wrong(Use use) {
        return use.outcome().positive() == is(use, RunControl.BLANK);
    }

    private static boolean is(Use use, RunControl control) {
        return use.control().filter(control.code()::equals).isPresent();
    }
}
