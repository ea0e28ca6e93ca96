package wickbench.training.round;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.person.PersonId;
import wickbench.training.Call;
import wickbench.training.ReaderScore;
import wickbench.training.Round;
import wickbench.training.RoundPlan;
import wickbench.training.book.Kinds;
import wickbench.training.book.Told;

/** One round, from what entries say of it. */
final class RoundFold {
    private final List<Told> told;

    private RoundFold(List<Told> told) {
        this.told = told;
    }

    /**
     * @param told everything about the round, in the order in which it was done
     * @param seen what people have signed as seen
     * @param entries finds the entry of what was told
     */
    static Optional<Round> of(List<Told> told, List<Told> seen, java.util.function.Function<Told, Entry> entries) {
        return new RoundFold(told).fold(seen, entries);
    }

    /** Of two that say the same of one round the earlier stands; the later one is a clash until it is settled. */
    private Optional<Told> first(String kind) {
        return told.stream().filter(each -> each.is(kind)).findFirst();
    }

    private Optional<Round> fold(List<Told> seen, java.util.function.Function<Told, Entry> entries) {
        return first(Kinds.OPENED).map(opened -> {
            Fields fields = opened.fields();
            RoundPlan plan = RoundJson.plan(fields);
            Optional<Told> scored = first(Kinds.SCORED);
            Optional<Round.Opened> key = first(Kinds.CLOSED).map(RoundFold::key);
            List<ReaderScore> scores =
                    scored.map(each -> ScoreJson.scores(each.fields())).orElse(List.of());
            List<String> codes = fields.texts("codes");
            return new Round(
                    plan,
                    state(key.isPresent(), scored.isPresent()),
                    opened.at(),
                    opened.by(),
                    codes,
                    RoundJson.photographs(fields),
                    new wickbench.api.journal.Hash(fields.text("commitment")),
                    calls(plan, codes),
                    key,
                    scores,
                    scored.map(Told::id),
                    scored.map(each -> seenBy(each.id(), seen)).orElse(Set.of()),
                    told.stream()
                            .filter(each -> each.kind().startsWith("round."))
                            .map(entries)
                            .toList());
        });
    }

    private static Round.State state(boolean closed, boolean scored) {
        if (scored) {
            return Round.State.SCORED;
        }
        return closed ? Round.State.CLOSED : Round.State.OPEN;
    }

    private static Round.Opened key(Told closed) {
        Fields fields = closed.fields();
        return new Round.Opened(
                RoundJson.key(fields.child("key")),
                closed.at(),
                RoundJson.people(fields, "without"),
                fields.optionalText("reason"));
    }

    private static Set<PersonId> seenBy(UUID score, List<Told> seen) {
        return seen.stream()
                .filter(each -> each.fields().text("about").equals(score.toString()))
                .map(each -> new PersonId(each.fields().text("person")))
                .collect(Collectors.toSet());
    }

    /** The first call of a person on a strip counts; what came later, from another station, changes nothing. */
    private Map<PersonId, List<Call>> calls(RoundPlan plan, List<String> codes) {
        Map<PersonId, Map<String, Call>> byPerson = new LinkedHashMap<>();
        told.stream().filter(each -> each.is(Kinds.CALLED)).forEach(each -> {
            Fields fields = each.fields();
            Map<String, Call> own =
                    byPerson.computeIfAbsent(new PersonId(fields.text("person")), person -> new HashMap<>());
            CallJson.calls(fields, plan.format()).forEach(call -> own.putIfAbsent(call.code(), call));
        });
        Map<PersonId, List<Call>> calls = new LinkedHashMap<>();
        byPerson.forEach((person, own) -> {
            List<Call> inOrder = new ArrayList<>(own.values());
            inOrder.removeIf(call -> !codes.contains(call.code()));
            inOrder.sort(Comparator.comparing(call -> codes.indexOf(call.code())));
            calls.put(person, inOrder);
        });
        return calls;
    }
}
