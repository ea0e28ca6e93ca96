package wickbench.reading.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.profile.ControlRule;
import wickbench.api.reading.RunControl;
import wickbench.reading.owed.Fact.Cleaned;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Doubted;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Ran;
import wickbench.reading.owed.Fact.RanStrip;
import wickbench.reading.owed.Fact.Ruled;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;
import wickbench.reading.owed.Fact.Trusted;

/** The facts in the order of their times, found by what they have in common. */
final class Facts {
    static final Comparator<Fact> ORDER = Comparator.comparing(Fact::at).thenComparing(Fact::id);

    private final List<Tested> tests = new ArrayList<>();
    private final List<Looked> looks = new ArrayList<>();
    private final Map<String, List<Cleaned>> cleans = new HashMap<>();
    private final List<Doubted> doubts = new ArrayList<>();
    private final Map<UUID, Instant> trusted = new HashMap<>();
    private final Map<UUID, List<Decided>> decisions = new HashMap<>();
    private final Map<UUID, Named> named = new HashMap<>();
    private final Map<Extract, List<Tested>> byExtract = new HashMap<>();
    private final Map<String, List<Tested>> byPlace = new HashMap<>();
    private final Map<Kit, List<Tested>> byKit = new HashMap<>();

    private final Map<UUID, Ran> runs = new HashMap<>();
    private final TreeMap<Instant, Ruled> rules = new TreeMap<>();

    private record Kit(MethodId method, LotId lot) {
        static Kit of(Tested test) {
            return new Kit(test.method(), test.lot());
        }
    }

    private record Extract(MethodId method, String sample, Optional<RunControl> control) {
        static Extract of(Tested test) {
            return new Extract(test.method(), test.sample(), test.control());
        }
    }

    Facts(Collection<Fact> facts) {
        List<Fact> all = new ArrayList<>(facts);
        all.addAll(cleansOfRuns(facts));
        all.stream().sorted(ORDER).forEach(this::sort);
    }

    /** Returns the cleans of which the samples of runs were said to be taken after. */
    private static List<Fact> cleansOfRuns(Collection<Fact> facts) {
        Map<UUID, Spot> spots = new HashMap<>();
        List<Fact> cleans = new ArrayList<>();
        facts.stream()
                .filter(Tested.class::isInstance)
                .map(Tested.class::cast)
                .forEach(test -> spots.put(test.id(), test.spot()));
        for (Fact fact : facts) {
            if (fact instanceof Ran ran) {
                for (RanStrip strip : ran.strips()) {
                    Spot spot = spots.get(strip.reading());
                    if (spot != null && strip.cleaned().isPresent()) {
                        cleans.add(new Cleaned(ran.id(), strip.cleaned().get(), spot));
                    }
                }
            }
        }
        return cleans;
    }

    private void sort(Fact fact) {
        if (fact instanceof Tested test) {
            tests.add(test);
            add(byExtract, Extract.of(test), test);
            add(byPlace, test.spot().place(), test);
            add(byKit, Kit.of(test), test);
        } else if (fact instanceof Looked look) {
            looks.add(look);
        } else if (fact instanceof Cleaned clean) {
            add(cleans, clean.spot().place(), clean);
        } else if (fact instanceof Named names) {
            // the last word counts
            named.put(names.reading(), names);
        } else if (fact instanceof Decided decision) {
            add(decisions, decision.owes(), decision);
        } else if (fact instanceof Ran ran) {
            ran.strips().forEach(strip -> runs.put(strip.reading(), ran));
        } else if (fact instanceof Ruled rule) {
            // of two of one instant the last in the order of ids counts, as everywhere
            rules.put(rule.at(), rule);
        } else if (fact instanceof Doubted doubt) {
            doubts.add(doubt);
        } else {
            Trusted trust = (Trusted) fact;
            // the later word is the more cautious one
            trust.doubts().forEach(doubt -> trusted.merge(doubt, trust.at(), (one, other) -> other));
        }
    }

    private static <K, F> void add(Map<K, List<F>> found, K by, F fact) {
        found.computeIfAbsent(by, key -> new ArrayList<>()).add(fact);
    }

    List<Tested> tests() {
        return tests;
    }

    List<Looked> looks() {
        return looks;
    }

    /** Returns what cleaned a spot after an instant, the place itself or its whole line. */
    Stream<Cleaned> cleans(Spot spot, Instant after) {
        return Stream.concat(Stream.of(spot.place()), spot.line().stream())
                .distinct()
                .flatMap(place -> later(cleans.getOrDefault(place, List.of()), after).stream())
                .filter(clean -> clean.spot().covers(spot));
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

    /** Returns the run that a strip belongs to; strips of sheets belong to none. */
    Optional<Ran> run(Tested test) {
        return Optional.ofNullable(runs.get(test.id()));
    }

    boolean ruled() {
        return rules.values().stream().anyMatch(rule -> !rule.controls().equals(ControlRule.NONE));
    }

    /** Returns the rule that held when a strip was started. */
    Optional<Ruled> rule(Tested test) {
        return Optional.ofNullable(rules.floorEntry(test.at())).map(Map.Entry::getValue);
    }

    /** Returns all strips of the same extract by the same method, the given one too. */
    Stream<Tested> extract(Tested test) {
        return byExtract.get(Extract.of(test)).stream();
    }

    /** Returns the strips of the same method and lot before another. */
    List<Tested> ofKitBefore(Tested test) {
        List<Tested> kit = byKit.get(Kit.of(test));
        return kit.subList(0, from(kit, other -> !after(test, other)));
    }

    /** Returns the strips of the same method and lot after another. */
    List<Tested> ofKitAfter(Tested test) {
        List<Tested> kit = byKit.get(Kit.of(test));
        return kit.subList(from(kit, other -> after(other, test)), kit.size());
    }

    /** Returns the strips of samples of a place after an instant. */
    Stream<Tested> at(String place, Instant after) {
        return later(byPlace.getOrDefault(place, List.of()), after).stream()
                .filter(test -> test.control().isEmpty());
    }

    private static <F extends Fact> List<F> later(List<F> ordered, Instant after) {
        return ordered.subList(from(ordered, fact -> fact.at().isAfter(after)), ordered.size());
    }

    /** Returns where those begin, in a list in order, of which something holds that held of none before. */
    private static <F> int from(List<F> ordered, Predicate<F> holds) {
        int low = 0;
        int high = ordered.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (holds.test(ordered.get(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    static boolean after(Fact fact, Fact other) {
        return ORDER.compare(fact, other) > 0;
    }
}
