package wickbench.training.round;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.figures.NoAnswer;
import wickbench.figures.agreement.Kappa;
import wickbench.figures.agreement.ManyReaders;
import wickbench.figures.agreement.McNemar;
import wickbench.figures.agreement.TwoReaders;
import wickbench.figures.agreement.Weights;
import wickbench.figures.proportion.Interval;
import wickbench.figures.seeing.Sensitivity;
import wickbench.training.Agreement;
import wickbench.training.Call;
import wickbench.training.Compared;
import wickbench.training.PassRule;
import wickbench.training.ReaderScore;
import wickbench.training.ReaderScore.Failure;
import wickbench.training.ReaderScore.Tally;
import wickbench.training.ReaderScore.Topic;
import wickbench.training.Round;
import wickbench.training.Truth;

/** How readers did, from their calls and the opened key alone. */
final class Scoring {
    private static final double LEVEL = 0.95;

    /** What an outcome says, above range or not. */
    private enum Category {
        NEGATIVE,
        POSITIVE,
        INVALID;

        static Category of(Outcome outcome) {
            if (outcome == Outcome.INVALID) {
                return INVALID;
            }
            return outcome.positive() ? POSITIVE : NEGATIVE;
        }
    }

    private final Round round;
    private final Keyed keyed;

    private Scoring(Round round) {
        this.round = round;
        this.keyed = Keyed.of(round);
    }

    /** Starts on a round whose key is opened. */
    static Scoring of(Round round) {
        return new Scoring(round);
    }

    /** Returns who called every strip; nobody else is scored. */
    List<PersonId> complete() {
        return round.plan().readers().stream()
                .filter(reader -> round.callsOf(reader).size() == round.codes().size())
                .toList();
    }

    List<ReaderScore> scores() {
        return complete().stream().map(this::score).toList();
    }

    private ReaderScore score(PersonId reader) {
        List<Call> calls = round.callsOf(reader).stream()
                .filter(call -> keyed.strips().containsKey(call.code()))
                .toList();
        List<Tally> tallies = new ArrayList<>();
        for (Topic topic : List.of(Topic.NEAR, Topic.CLEAR, Topic.WITHOUT, Topic.INVALID)) {
            List<Call> of =
                    calls.stream().filter(call -> truth(call).topic() == topic).toList();
            if (!of.isEmpty()) {
                int right = (int) of.stream()
                        .filter(call -> truth(call).right(call.outcome()))
                        .count();
                tallies.add(tally(topic, right, of.size()));
            }
        }
        int called = round.callsOf(reader).size();
        int inside = (int) round.callsOf(reader).stream()
                .filter(call -> round.plan().inside(call.elapsed()))
                .count();
        Optional<Kappa> kappa = agreement(calls);
        return new ReaderScore(
                reader,
                tallies,
                inside,
                called,
                kappa.map(found -> found.kappa().estimate()),
                kappa.map(Kappa::ac1),
                dPrime(calls),
                failures(tallies, called - inside));
    }

    static Tally tally(Topic topic, int right, int of) {
        return new Tally(topic, right, of, Interval.EXACT.of(right, of, LEVEL));
    }

    private Truth truth(Call call) {
        return keyed.strips().get(call.code());
    }

    private List<Failure> failures(List<Tally> tallies, int outside) {
        PassRule rule = round.plan().design().rule();
        List<Failure> failures = new ArrayList<>();
        for (Tally tally : tallies) {
            int allowed = switch (tally.topic()) {
                case NEAR -> rule.nearMissed();
                case CLEAR -> rule.clearMissed();
                case WITHOUT -> rule.falseAlarms();
                case INVALID -> rule.invalidMissed();
                case WINDOW -> rule.outsideWindow();
            };
            if (tally.wrong() > allowed) {
                failures.add(new Failure(tally.topic(), tally.wrong(), allowed));
            }
        }
        if (outside > rule.outsideWindow()) {
            failures.add(new Failure(Topic.WINDOW, outside, rule.outsideWindow()));
        }
        return failures;
    }

    private Optional<Kappa> agreement(List<Call> calls) {
        long[][] counts = new long[Category.values().length][Category.values().length];
        for (Call call : calls) {
            counts[Category.of(truth(call).expected()).ordinal()][
                    Category.of(call.outcome()).ordinal()]++;
        }
        return kappa(used(counts));
    }

    /** Returns Cohen's kappa with what belongs to it; empty where all is one category. */
    static Optional<Kappa> kappa(long[][] counts) {
        try {
            return counts.length < 2
                    ? Optional.empty()
                    : Optional.of(TwoReaders.of(counts).kappa(Weights.none(counts.length), LEVEL));
        } catch (NoAnswer none) {
            return Optional.empty();
        }
    }

    /** Leaves out the categories that neither side used. */
    private static long[][] used(long[][] counts) {
        int[] places = java.util.stream.IntStream.range(0, counts.length)
                .filter(i -> Arrays.stream(counts[i]).sum()
                                + Arrays.stream(counts).mapToLong(row -> row[i]).sum()
                        > 0)
                .toArray();
        return Arrays.stream(places)
                .mapToObj(
                        i -> Arrays.stream(places).mapToLong(j -> counts[i][j]).toArray())
                .toArray(long[][]::new);
    }

    private Optional<Double> dPrime(List<Call> calls) {
        long[] near = positives(calls, Topic.NEAR);
        long[] without = positives(calls, Topic.WITHOUT);
        return near[1] == 0 || without[1] == 0
                ? Optional.empty()
                : Optional.of(Sensitivity.corrected(near[0], near[1], without[0], without[1])
                        .dPrime());
    }

    /** How many of a kind were called positive, and how many there are. */
    private long[] positives(List<Call> calls, Topic topic) {
        List<Call> of =
                calls.stream().filter(call -> truth(call).topic() == topic).toList();
        return new long[] {of.stream().filter(call -> call.outcome().positive()).count(), of.size()};
    }

    Agreement agreement() {
        List<PersonId> readers = complete();
        Map<String, long[]> counts = new LinkedHashMap<>();
        for (PersonId reader : readers) {
            for (Call call : round.callsOf(reader)) {
                counts.computeIfAbsent(call.code(), code -> new long[Category.values().length])[
                        Category.of(call.outcome()).ordinal()]++;
            }
        }
        Optional<ManyReaders> found = many(counts.values().toArray(long[][]::new), readers.size());
        return new Agreement(readers, found.map(ManyReaders::kappa), found.map(ManyReaders::ac1), keyed.disputed());
    }

    /** Returns Fleiss' kappa; empty for a single reader or a single category. */
    private static Optional<ManyReaders> many(long[][] counts, int readers) {
        if (readers < 2) {
            return Optional.empty();
        }
        int[] places = java.util.stream.IntStream.range(0, Category.values().length)
                .filter(i -> Arrays.stream(counts).mapToLong(row -> row[i]).sum() > 0)
                .toArray();
        return many(Arrays.stream(counts)
                .map(row -> Arrays.stream(places).mapToLong(i -> row[i]).toArray())
                .toArray(long[][]::new));
    }

    /** Returns the agreement of several readers; empty where all is one category. */
    static Optional<ManyReaders> many(long[][] counts) {
        try {
            return counts.length == 0 || counts[0].length < 2 ? Optional.empty() : Optional.of(ManyReaders.of(counts));
        } catch (NoAnswer none) {
            return Optional.empty();
        }
    }

    /** Returns whether a reader was right, by the panel's name of the strip. */
    private Map<String, Boolean> rights(PersonId reader) {
        Map<String, Boolean> rights = new LinkedHashMap<>();
        for (Call call : round.callsOf(reader)) {
            Optional.ofNullable(keyed.strips().get(call.code()))
                    .ifPresent(truth -> rights.put(truth.item(), truth.right(call.outcome())));
        }
        return rights;
    }

    /** Compares a reader in two rounds on the strips that both hold. */
    static Compared compare(PersonId reader, Round first, Round second) {
        Map<String, Boolean> one = of(first).rights(reader);
        Map<String, Boolean> other = of(second).rights(reader);
        List<String> shared = one.keySet().stream().filter(other::containsKey).toList();
        int b = (int) shared.stream()
                .filter(item -> one.get(item) && !other.get(item))
                .count();
        int c = (int) shared.stream()
                .filter(item -> !one.get(item) && other.get(item))
                .count();
        return new Compared(
                reader,
                first.id(),
                second.id(),
                shared.size(),
                b,
                c,
                b + c == 0 ? Optional.empty() : Optional.of(McNemar.of(b, c)));
    }
}
