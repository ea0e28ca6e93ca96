package wickbench.reading.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.method.MethodId;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;

/** An item while its facts are gathered. */
final class Draft {
    final UUID owes;
    final Instant since;
    Step step;
    boolean callQuality;
    boolean done;
    boolean neighboursNamed;
    final List<String> missing = new ArrayList<>();
    final List<UUID> answers = new ArrayList<>();
    final List<UUID> doubts = new ArrayList<>();
    private final String sample;
    private final Spot spot;
    private final Optional<MethodId> method;

    Draft(Tested test, Step step) {
        this(test.id(), test.at(), step, test.sample(), test.spot(), Optional.of(test.method()));
    }

    Draft(UUID owes, Instant since, Step step, String sample, Spot spot, Optional<MethodId> method) {
        this.owes = owes;
        this.since = since;
        this.step = step;
        this.sample = sample;
        this.spot = spot;
        this.method = method;
    }

    Draft answered(Fact fact) {
        answers.add(fact.id());
        return this;
    }

    OwedItem item() {
        return new OwedItem(
                owes,
                step,
                callQuality,
                sample,
                spot.place(),
                spot.line(),
                method,
                since,
                done ? List.of() : missing,
                neighboursNamed,
                answers,
                doubts,
                done);
    }
}
