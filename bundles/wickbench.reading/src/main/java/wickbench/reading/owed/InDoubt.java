package wickbench.reading.owed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Doubted;
import wickbench.reading.owed.Fact.Tested;

/** Negatives that something put in doubt: each doubt waits for a decision that names it. */
final class InDoubt {
    private InDoubt() {}

    static List<Draft> drafts(Facts facts) {
        List<Draft> drafts = new ArrayList<>();
        facts.tests().stream().filter(InDoubt::standsAsNegative).forEach(test -> {
            List<Doubted> doubts = facts.doubts(test).toList();
            if (!doubts.isEmpty()) {
                drafts.add(draft(facts, test, doubts));
            }
        });
        return drafts;
    }

    /** A control stands for no line and no product, and what once held is no Negative, whatever a correction says. */
    private static boolean standsAsNegative(Tested test) {
        return test.outcome() == Outcome.NEGATIVE
                && test.control().isEmpty()
                && !test.owed().contains(Owed.HOLD);
    }

    private static Draft draft(Facts facts, Tested test, List<Doubted> doubts) {
        Draft draft = new Draft(
                test.id(), doubts.get(0).at(), Step.DECIDE, test.sample(), test.spot(), Optional.of(test.method()));
        doubts.forEach(doubt -> decision(facts, test.id(), doubt.id())
                .ifPresentOrElse(decided -> answered(draft, decided), () -> open(draft, doubt)));
        draft.done = draft.doubts.isEmpty();
        return draft;
    }

    private static void answered(Draft draft, Decided decided) {
        if (!draft.answers.contains(decided.id())) {
            draft.answered(decided);
        }
    }

    private static void open(Draft draft, Doubted doubt) {
        if (!draft.doubts.contains(doubt.id())) {
            draft.doubts.add(doubt.id());
        }
        if (!draft.missing.contains(doubt.doubt().cause())) {
            draft.missing.add(doubt.doubt().cause());
        }
    }

    /** A decision that had not seen the doubt does not answer it, so it names both. */
    private static Optional<Decided> decision(Facts facts, UUID result, UUID doubt) {
        return Stream.concat(named(facts, result, doubt), named(facts, doubt, result))
                .findFirst();
    }

    private static Stream<Decided> named(Facts facts, UUID owes, UUID about) {
        return facts.decisions(owes)
                .filter(decision -> decision.owed() == Owed.DECIDE)
                .filter(decision -> decision.about().contains(about));
    }
}
