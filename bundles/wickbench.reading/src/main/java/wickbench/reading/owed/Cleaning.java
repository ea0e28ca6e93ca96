package wickbench.reading.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.owed.Step;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;

/** Cleaning again, and new samples after it. */
final class Cleaning {
    private Cleaning() {}

    static Draft owedBy(Facts facts, Tested test) {
        return cleaned(facts, test.spot(), new Draft(test, Step.RE_CLEAN));
    }

    static Draft owedBy(Facts facts, Looked look) {
        return cleaned(
                facts, look.spot(), new Draft(look.id(), look.at(), Step.RE_CLEAN, "", look.spot(), Optional.empty()));
    }

    /** New samples of the point and its neighbours, by the same method, valid and Negative, after the clean. */
    static Draft reTest(Facts facts, Tested test) {
        Draft draft = new Draft(test, Step.RE_TEST);
        Optional<Named> named = facts.neighbours(test.id());
        draft.neighboursNamed = named.isPresent();
        Optional<Clean> clean = clean(facts, test.spot(), test.at());
        for (String point : points(test, named)) {
            Optional<Tested> negative = clean.flatMap(done -> negative(facts, test, point, done));
            negative.ifPresentOrElse(draft::answered, () -> draft.missing.add(point));
        }
        draft.done = draft.neighboursNamed && test.spot().stated() && draft.missing.isEmpty();
        return draft;
    }

    private static List<String> points(Tested test, Optional<Named> named) {
        List<String> points = new ArrayList<>();
        Stream.concat(Stream.of(test.spot().place()), named.map(Named::points).orElse(List.of()).stream())
                .filter(point -> !point.isBlank())
                .distinct()
                .forEach(points::add);
        return points;
    }

    private static Optional<Tested> negative(Facts facts, Tested test, String point, Clean clean) {
        return facts.at(point, clean.from())
                .filter(other -> other.method().equals(test.method()) && other.outcome() == Outcome.NEGATIVE)
                .filter(other -> other.noThinnerThan(test))
                .findFirst();
    }

    private static Draft cleaned(Facts facts, Spot spot, Draft draft) {
        clean(facts, spot, draft.since).ifPresent(clean -> {
            draft.answers.add(clean.entry());
            draft.done = true;
        });
        return draft;
    }

    /**
     * A clean that is known of.
     *
     * @param from samples taken after this instant show it
     */
    private record Clean(UUID entry, Instant from) {}

    /** Returns the first clean that was recorded, or of which a sample says that it was taken after it. */
    private static Optional<Clean> clean(Facts facts, Spot spot, Instant after) {
        Optional<Clean> recorded =
                facts.cleans(spot, after).min(Facts.ORDER).map(clean -> new Clean(clean.id(), clean.at()));
        Optional<Clean> told = facts.at(spot.place(), after)
                .filter(test -> spot.stated() && test.reason().equals(Optional.of(Reason.AFTER_CLEANING)))
                .findFirst()
                // the sample itself was taken after the clean of which it tells
                .map(test -> new Clean(test.id(), test.at().minusMillis(1)));
        return Stream.concat(recorded.stream(), told.stream()).min(Comparator.comparing(Clean::from));
    }
}
