package wickbench.reading.owed;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.reading.owed.Fact.Tested;

/** Thinner strips of an extract: before a Negative stands, and to bracket an amount above the range. */
final class Dilutions {
    private static final List<BigDecimal> BEFORE_NEGATIVE = List.of(BigDecimal.TEN, BigDecimal.valueOf(100));

    private Dilutions() {}

    /** A Negative of a strip without hook line stands when ×10 and ×100 were Negative, and is overturned by a Positive. */
    static Draft beforeNegative(Facts facts, Tested test) {
        Draft draft = new Draft(test, Step.REPEAT_DILUTED);
        List<Tested> thinner = thinner(facts, test).toList();
        thinner.forEach(draft::answered);
        BEFORE_NEGATIVE.stream()
                .filter(times ->
                        thinner.stream().noneMatch(strip -> strip.dilution().compareTo(times) == 0))
                .forEach(times -> draft.missing.add(times.toPlainString()));
        draft.done = draft.missing.isEmpty()
                || thinner.stream().anyMatch(strip -> strip.outcome().positive());
        return draft;
    }

    static Draft bracket(Facts facts, Tested test) {
        Draft draft = new Draft(test, Step.BRACKET);
        List<Tested> thinner = thinner(facts, test).toList();
        thinner.forEach(draft::answered);
        BigDecimal thinnest = thinner.stream().map(Tested::dilution).reduce(test.dilution(), BigDecimal::max);
        draft.missing.add(thinnest.movePointRight(1).stripTrailingZeros().toPlainString());
        draft.done = thinner.stream().anyMatch(strip -> strip.outcome() != Outcome.POSITIVE_ABOVE_RANGE);
        return draft;
    }

    private static Stream<Tested> thinner(Facts facts, Tested test) {
        return facts.extract(test)
                .filter(other -> other.valid() && other.dilution().compareTo(test.dilution()) > 0);
    }
}
