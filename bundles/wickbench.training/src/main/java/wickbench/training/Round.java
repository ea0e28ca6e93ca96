package wickbench.training;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;

/**
 * A blind round as it stands.
 *
 * @param codes what stands on the strips, in the order in which they are read
 * @param photographs the pictures that are read instead of strips, by code
 * @param commitment the SHA-256 of the key, written before the first call
 * @param calls what each person called, in the order of the codes
 * @param key once it is opened
 * @param scores one for each reader, once it is scored
 * @param seen who has signed that they have seen their score
 * @param entries those that it rests on
 */
public record Round(
        RoundPlan plan,
        State state,
        Instant opened,
        PersonId openedBy,
        List<String> codes,
        Map<String, Hash> photographs,
        Hash commitment,
        Map<PersonId, List<Call>> calls,
        Optional<Opened> key,
        List<ReaderScore> scores,
        Optional<UUID> scored,
        Set<PersonId> seen,
        List<Entry> entries) {
    public Round {
        codes = List.copyOf(codes);
        photographs = Map.copyOf(photographs);
        calls = Map.copyOf(calls);
        scores = List.copyOf(scores);
        seen = Set.copyOf(seen);
        entries = List.copyOf(entries);
    }

    /** How far it is. */
    public enum State implements Coded {
        OPEN,
        /** Its key is opened; nobody calls any more. */
        CLOSED,
        SCORED
    }

    /**
     * The opened key.
     *
     * @param without who had not called everything, and why it was opened all the same
     */
    public record Opened(RoundKey key, Instant at, List<PersonId> without, Optional<String> reason) {
        public Opened {
            without = List.copyOf(without);
        }
    }

    public String id() {
        return plan.id();
    }

    public List<Call> callsOf(PersonId person) {
        return calls.getOrDefault(person, List.of());
    }

    /** Returns who has not called every strip yet. */
    public List<PersonId> missing() {
        return plan.callers().stream()
                .filter(person -> callsOf(person).size() < codes.size())
                .toList();
    }

    public Optional<ReaderScore> scoreOf(PersonId reader) {
        return scores.stream().filter(score -> score.reader().equals(reader)).findFirst();
    }

    /** Tells whether the opened key is the one that was committed to; empty before it is opened. */
    public Optional<Boolean> keyHolds() {
        return key.map(opened -> opened.key().commitment().equals(commitment));
    }
}
