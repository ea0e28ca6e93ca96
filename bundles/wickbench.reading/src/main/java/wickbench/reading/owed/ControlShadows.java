package wickbench.reading.owed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RunControl;
import wickbench.reading.owed.Fact.Tested;

/** Negatives that were recorded before a low positive control of their kit failed, back to the last good one. */
final class ControlShadows {
    private final Facts facts;
    private final Map<UUID, Draft> drafts = new LinkedHashMap<>();

    ControlShadows(Facts facts) {
        this.facts = facts;
    }

    List<Draft> drafts() {
        facts.tests().stream()
                .filter(test -> lowPositive(test) && !test.outcome().positive())
                .forEach(this::shade);
        return List.copyOf(drafts.values());
    }

    private void shade(Tested failed) {
        List<Tested> before = facts.ofKitBefore(failed);
        int good = before.size();
        while (good > 0 && !isGood(before.get(good - 1))) {
            good--;
        }
        before.subList(good, before.size()).stream()
                .filter(test ->
                        test.outcome() == Outcome.NEGATIVE && test.control().isEmpty())
                .forEach(test -> drafts.computeIfAbsent(test.id(), first -> again(test, failed)));
    }

    private Draft again(Tested test, Tested failed) {
        Draft draft = new Draft(
                test.id(),
                failed.at(),
                Step.REPEAT_AFTER_CONTROL,
                test.sample(),
                test.spot(),
                Optional.of(test.method()));
        Stream<Tested> ofPlace = test.spot().stated()
                ? facts.at(test.spot().place(), failed.at().minusMillis(1))
                        .filter(other -> other.method().equals(test.method()))
                : Stream.empty();
        Stream.concat(facts.extract(test), ofPlace)
                .filter(other -> Facts.after(other, failed) && other.valid() && other.asThin(test))
                .min(Facts.ORDER)
                .ifPresent(repeat -> draft.answered(repeat).done = true);
        return draft;
    }

    private static boolean isGood(Tested test) {
        return lowPositive(test) && test.outcome().positive();
    }

    private static boolean lowPositive(Tested test) {
        return test.control().equals(Optional.of(RunControl.LOW_POSITIVE));
    }
}
