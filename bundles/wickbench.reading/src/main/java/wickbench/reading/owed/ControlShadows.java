package wickbench.reading.owed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RunControl;
import wickbench.reading.owed.Fact.Tested;

/** Negatives that were recorded before a low positive control of their kit failed, back to the last good one. */
final class ControlShadows {
    private final Facts facts;
    private final List<Draft> drafts = new ArrayList<>();

    ControlShadows(Facts facts) {
        this.facts = facts;
    }

    List<Draft> drafts() {
        facts.tests().stream()
                .filter(test -> lowPositive(test) && !test.outcome().positive())
                .forEach(this::shade);
        return drafts;
    }

    private void shade(Tested failed) {
        Optional<Tested> good = facts.tests().stream()
                .filter(test -> lowPositive(test) && test.outcome().positive() && test.sameKit(failed))
                .filter(test -> Facts.after(failed, test))
                .reduce((older, newer) -> newer);
        facts.tests().stream()
                .filter(test ->
                        test.outcome() == Outcome.NEGATIVE && test.control().isEmpty() && test.sameKit(failed))
                .filter(test -> Facts.after(failed, test))
                .filter(test ->
                        good.filter(control -> Facts.after(control, test)).isEmpty())
                .filter(test -> drafts.stream().noneMatch(draft -> draft.owes.equals(test.id())))
                .forEach(test -> drafts.add(again(test, failed)));
    }

    private Draft again(Tested test, Tested failed) {
        Draft draft = new Draft(
                test.id(),
                failed.at(),
                Step.REPEAT_AFTER_CONTROL,
                test.sample(),
                test.spot(),
                Optional.of(test.method()));
        facts.tests().stream()
                .filter(other -> Facts.after(other, failed) && other.valid() && other.asThin(test))
                .filter(other -> other.sameExtract(test)
                        || other.method().equals(test.method()) && other.spot().same(test.spot()))
                .findFirst()
                .ifPresent(repeat -> draft.answered(repeat).done = true);
        return draft;
    }

    private static boolean lowPositive(Tested test) {
        return test.control().equals(Optional.of(RunControl.LOW_POSITIVE));
    }
}
