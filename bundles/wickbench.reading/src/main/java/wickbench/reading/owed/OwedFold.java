package wickbench.reading.owed;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Tested;

/** Folds what has happened into what is owed. */
public final class OwedFold {
    private final Facts facts;
    private final List<Draft> drafts = new ArrayList<>();

    private OwedFold(Collection<Fact> facts) {
        this.facts = new Facts(facts);
    }

    /** Returns everything that is owed or was, the oldest first; the order of the facts does not matter. */
    public static List<OwedItem> of(Collection<Fact> facts) {
        OwedFold fold = new OwedFold(facts);
        fold.drafts.addAll(new Repeats(fold.facts).drafts());
        fold.drafts.addAll(new ControlShadows(fold.facts).drafts());
        fold.drafts.addAll(new ControlsDue(fold.facts).drafts());
        fold.facts.tests().forEach(fold::tested);
        fold.facts.looks().stream()
                .filter(look -> look.result() == Visual.SOILED)
                .forEach(fold::soiled);
        fold.drafts.forEach(fold::decide);
        fold.drafts.addAll(InDoubt.drafts(fold.facts));
        return fold.drafts.stream()
                .map(Draft::item)
                .sorted(Comparator.comparing(OwedItem::since)
                        .thenComparing(OwedItem::owes)
                        .thenComparing(OwedItem::step))
                .toList();
    }

    private void tested(Tested test) {
        if (test.owed().contains(Owed.REPEAT_DILUTED)) {
            drafts.add(Dilutions.beforeNegative(facts, test));
        }
        if (test.owed().contains(Owed.BRACKET)) {
            drafts.add(Dilutions.bracket(facts, test));
        }
        if (test.owed().contains(Owed.HOLD)) {
            drafts.add(hold(test));
        }
        if (test.owed().contains(Owed.RE_CLEAN)) {
            drafts.add(Cleaning.owedBy(facts, test));
        }
        if (test.owed().contains(Owed.RE_TEST)) {
            drafts.add(Cleaning.reTest(facts, test));
        }
    }

    /** A Positive is held until somebody decides, a mere sign of allergen until it was repeated. */
    private Draft hold(Tested test) {
        Draft draft = new Draft(test, Step.HOLD);
        if (test.sign()) {
            facts.extract(test)
                    .filter(other -> Facts.after(other, test) && other.valid() && other.asThin(test))
                    .findFirst()
                    .ifPresent(repeat -> draft.answered(repeat).done = true);
        }
        return draft;
    }

    private void soiled(Looked look) {
        drafts.add(Cleaning.owedBy(facts, look));
    }

    private void decide(Draft draft) {
        facts.decisions(draft.owes)
                .filter(decision -> decision.owed() == draft.step.owed())
                .findFirst()
                .ifPresent(decision -> draft.answered(decision).done = true);
    }
}
