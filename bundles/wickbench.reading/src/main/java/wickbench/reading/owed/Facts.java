package wickbench.reading.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.reading.owed.Fact.Cleaned;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Doubted;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Tested;
import wickbench.reading.owed.Fact.Trusted;

/** The facts in the order of their times, found by what they have in common. */
final class Facts {
    private static final Comparator<Fact> ORDER = Comparator.comparing(Fact::at).thenComparing(Fact::id);

    private final List<Tested> tests = new ArrayList<>();
    private final List<Looked> looks = new ArrayList<>();
    private final List<Cleaned> cleans = new ArrayList<>();
    private final List<Doubted> doubts = new ArrayList<>();
    private final Map<UUID, Instant> trusted = new HashMap<>();
    private final Map<UUID, List<Decided>> decisions = new HashMap<>();
    private final Map<UUID, Named> named = new HashMap<>();
    private final Map<String, List<Tested>> bySample = new HashMap<>();
    private final Map<String, List<Tested>> byPlace = new HashMap<>();

    Facts(Collection<Fact> facts) {
        facts.stream().sorted(ORDER).forEach(this::sort);
    }

    private void sort(Fact fact) {
        if (fact instanceof Tested test) {
            tests.add(test);
            bySample.computeIfAbsent(test.sample(), key -> new ArrayList<>()).add(test);
            byPlace.computeIfAbsent(test.spot().place(), key -> new ArrayList<>())
                    .add(test);
        } else if (fact instanceof Looked look) {
            looks.add(look);
        } else if (fact instanceof Cleaned clean) {
            cleans.add(clean);
        } else if (fact instanceof Named names) {
            // the last word counts
            named.put(names.reading(), names);
        } else if (fact instanceof Decided decision) {
            decisions.computeIfAbsent(decision.owes(), key -> new ArrayList<>()).add(decision);
        } else if (fact instanceof Doubted doubt) {
            doubts.add(doubt);
        } else if (fact instanceof Trusted trust) {
            // the later word is the more cautious one
            trust.doubts().forEach(doubt -> trusted.merge(doubt, trust.at(), (one, other) -> other));
        }
    }

    List<Tested> tests() {
        return tests;
    }

    List<Looked> looks() {
        return looks;
    }

    Stream<Cleaned> cleansAfter(Instant at) {
        return cleans.stream().filter(clean -> clean.at().isAfter(at));
    }

    /** Returns the doubts that touch a strip, the oldest first. */
    Stream<Doubted> doubts(Tested test) {
        return doubts.stream().filter(each -> test.inDoubt(each.doubt())).filter(each -> !trusted(each, test));
    }

    private boolean trusted(Doubted doubt, Tested test) {
        Instant from = trusted.get(doubt.id());
        return from != null && !test.at().isBefore(from);
    }

    Stream<Decided> decisions(UUID owes) {
        return decisions.getOrDefault(owes, List.of()).stream();
    }

    Optional<Named> neighbours(UUID reading) {
        return Optional.ofNullable(named.get(reading));
    }

    /** Returns all strips of the same extract by the same method, the given one too. */
    Stream<Tested> extract(Tested test) {
        return bySample.get(test.sample()).stream().filter(test::sameExtract);
    }

    /** Returns the strips of samples of a place after an instant. */
    Stream<Tested> at(String place, Instant after) {
        return byPlace.getOrDefault(place, List.of()).stream()
                .filter(test -> test.control().isEmpty())
                .filter(test -> test.at().isAfter(after));
    }

    static boolean after(Fact fact, Fact other) {
        return ORDER.compare(fact, other) > 0;
    }
}
