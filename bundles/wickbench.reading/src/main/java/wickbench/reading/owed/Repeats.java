package wickbench.reading.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.owed.Step;
import wickbench.api.reading.Owed;
import wickbench.reading.owed.Fact.Tested;

/** Invalid strips: once more from the same extract, then a new sample, then no further. */
final class Repeats {
    private final Facts facts;
    private final Set<UUID> taken = new HashSet<>();
    private final List<Draft> drafts = new ArrayList<>();

    Repeats(Facts facts) {
        this.facts = facts;
    }

    List<Draft> drafts() {
        facts.tests().stream().filter(test -> test.owed().contains(Owed.REPEAT)).forEach(this::owed);
        return drafts;
    }

    private void owed(Tested test) {
        if (test.control().isPresent()) {
            drafts.add(control(test));
        } else if (!taken.contains(test.id())) {
            drafts.add(chain(test));
        }
    }

    /** A control is run again until one of its kind and kit is good. */
    private Draft control(Tested failed) {
        Draft draft = new Draft(failed, Step.REPEAT_CONTROL);
        facts.ofKitAfter(failed).stream()
                .filter(test ->
                        test.control().equals(failed.control()) && !test.owed().contains(Owed.REPEAT))
                .findFirst()
                .ifPresent(good -> draft.answered(good).done = true);
        return draft;
    }

    private Draft chain(Tested first) {
        Draft draft = new Draft(first, Step.REPEAT_SAME_EXTRACT);
        Tested last = first;
        for (Tested next = first; draft.step != Step.STOP_AND_CALL_QUALITY && !draft.done; last = next) {
            Optional<Tested> following = following(first, last);
            if (following.isEmpty()) {
                break;
            }
            next = following.get();
            link(draft, next, next.sample().equals(last.sample()));
        }
        return draft;
    }

    private void link(Draft draft, Tested next, boolean sameExtract) {
        draft.answered(next);
        draft.done = next.valid();
        if (!next.valid()) {
            taken.add(next.id());
            draft.callQuality = true;
            boolean again = sameExtract && draft.step == Step.REPEAT_SAME_EXTRACT;
            draft.step = again ? Step.REPEAT_NEW_SAMPLE : Step.STOP_AND_CALL_QUALITY;
        }
    }

    /** Returns the next strip of the same extract, or of a new sample of the same place. */
    private Optional<Tested> following(Tested first, Tested last) {
        Instant before = last.at();
        Stream<Tested> ofPlace = first.spot().stated()
                ? facts.at(first.spot().place(), before)
                        .filter(test -> test.method().equals(first.method()))
                : Stream.empty();
        return Stream.concat(facts.extract(last), ofPlace)
                .filter(test -> Facts.after(test, last) && test.asThin(first))
                .min(Comparator.comparing(Tested::at).thenComparing(Tested::id));
    }
}
