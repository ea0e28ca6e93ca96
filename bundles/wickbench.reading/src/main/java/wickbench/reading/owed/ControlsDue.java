package wickbench.reading.owed;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.owed.Step;
import wickbench.api.profile.Often;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.reading.owed.Fact.Ran;
import wickbench.reading.owed.Fact.Ruled;
import wickbench.reading.owed.Fact.Tested;

/**
 * Run controls that the site's rule asked for and that nobody ran, owed by the first strip that went without.
 *
 * <p>A control that was run and failed is no debt of this kind: it owes its own repeat.
 */
final class ControlsDue {
    private final Facts facts;
    private final Map<UUID, Draft> drafts = new LinkedHashMap<>();

    ControlsDue(Facts facts) {
        this.facts = facts;
    }

    /** Within what one control is enough: a run, or a day of the site. */
    private record Stretch(
            RunControl control, MethodId method, LotId lot, Optional<UUID> run, Optional<LocalDate> day) {}

    List<Draft> drafts() {
        if (facts.ruled()) {
            for (RunControl control : RunControl.values()) {
                due(control);
            }
        }
        return List.copyOf(drafts.values());
    }

    private void due(RunControl control) {
        Map<Stretch, Tested> first = new LinkedHashMap<>();
        Set<Stretch> controlled = new HashSet<>();
        for (Tested test : facts.tests()) {
            Optional<Ruled> rule = facts.rule(test);
            Optional<Often> often = rule.flatMap(held -> held.controls().often(control));
            if (often.isEmpty()) {
                continue;
            }
            Stretch stretch = stretch(control, test, often.get(), rule.get().zone());
            if (test.control().equals(Optional.of(control))) {
                controlled.add(stretch);
            } else if (test.control().isEmpty() && !test.reason().equals(Optional.of(Reason.LOT_CHECK))) {
                first.putIfAbsent(stretch, test);
            }
        }
        controlled.forEach(first::remove);
        first.values().forEach(test -> owe(test, control));
    }

    private Stretch stretch(RunControl control, Tested test, Often often, ZoneId zone) {
        Optional<UUID> run = often == Often.RUN ? facts.run(test).map(Ran::id) : Optional.empty();
        Optional<LocalDate> day =
                run.isPresent() ? Optional.empty() : Optional.of(LocalDate.ofInstant(test.at(), zone));
        return new Stretch(control, test.method(), test.lot(), run, day);
    }

    private void owe(Tested test, RunControl control) {
        Draft draft = drafts.computeIfAbsent(test.id(), first -> new Draft(test, Step.RUN_CONTROL));
        facts.ofKitAfter(test).stream()
                .filter(other -> other.control().equals(Optional.of(control)))
                .findFirst()
                .ifPresentOrElse(draft::answered, () -> draft.missing.add(control.code()));
        draft.done = draft.missing.isEmpty();
    }
}
