package wickbench.plant.programme;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import wickbench.plant.changeover.ChangeMade;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.site.Sampling;

/** Works out what is due, from rules and what happened. */
public final class Programme {
    private final Happened happened;
    private final Results results;
    private final Function<ChangeMade, Optional<Asked>> asked;
    private final ZoneId zone;
    private final Instant now;

    /**
     * What happened.
     *
     * @param changes by when they were made
     * @param excused reasons by {@link DueItem#key}
     */
    public record Happened(List<ChangeMade> changes, List<Maintained> maintained, Map<String, String> excused) {}

    /** A rule, and from when on it holds. */
    public record Held(Rule rule, Instant from) {}

    /** What a change asks for: the change as worked out, and of it what is to be sampled. */
    public record Asked(Changeover change, List<Sampling> samples) {}

    /** The results that count. */
    @FunctionalInterface
    public interface Results {
        /** Returns the first valid result at a place by a method, started from an instant on and before another. */
        Optional<UUID> first(Sampling what, Instant from, Instant before);
    }

    public Programme(
            Happened happened, Results results, Function<ChangeMade, Optional<Asked>> asked, ZoneId zone, Instant now) {
        this.happened = happened;
        this.results = results;
        this.asked = asked;
        this.zone = zone;
        this.now = now;
    }

    /** What made a rule due. */
    private record Occasion(Instant at, Optional<ChangeMade> change, Optional<String> about, List<Sampling> samples) {}

    /** Returns everything that the rules made due up to now, done or not; the oldest first. */
    public List<DueItem> of(List<Held> rules) {
        List<DueItem> items = new ArrayList<>();
        for (Held held : rules) {
            List<Occasion> occasions = occasions(held);
            for (int i = 0; i < occasions.size(); i++) {
                Occasion one = occasions.get(i);
                if (!one.samples().isEmpty()) {
                    items.add(item(held.rule(), one, ends(occasions, i)));
                }
            }
        }
        items.sort(Comparator.comparing(DueItem::since).thenComparing(DueItem::key));
        return items;
    }

    /** With the next change what was to be tested is gone, asked for or not; else with the next time. */
    private static Optional<Instant> ends(List<Occasion> occasions, int i) {
        return i + 1 < occasions.size() ? Optional.of(occasions.get(i + 1).at()) : Optional.empty();
    }

    private List<Occasion> occasions(Held held) {
        Rule rule = held.rule();
        return switch (rule.when()) {
            case CHANGEOVER, FIRST_OFF ->
                happened.changes().stream()
                        .filter(change -> change.line().equals(rule.line()))
                        .filter(change -> within(change.at(), held.from()))
                        .map(change ->
                                new Occasion(change.at(), Optional.of(change), about(change), samples(rule, change)))
                        .toList();
            case MAINTENANCE ->
                happened.maintained().stream()
                        .filter(done -> done.line().equals(rule.line()) && within(done.at(), held.from()))
                        .map(done -> new Occasion(done.at(), Optional.empty(), Optional.of(done.what()), rule.points()))
                        .toList();
            case PERIODIC -> periods(rule, held.from());
        };
    }

    private boolean within(Instant at, Instant from) {
        return !at.isBefore(from) && !at.isAfter(now);
    }

    private static Optional<String> about(ChangeMade change) {
        return Optional.of(change.from() + " → " + change.to());
    }

    private List<Sampling> samples(Rule rule, ChangeMade change) {
        Optional<Asked> asks = asked.apply(change)
                .filter(each -> each.change().tested())
                .filter(each -> rule.leaving().isEmpty()
                        || each.change().allergens().stream().anyMatch(rule.leaving()::contains));
        return asks.map(each -> rule.points().isEmpty() ? each.samples() : rule.points())
                .orElse(List.of());
    }

    private List<Occasion> periods(Rule rule, Instant from) {
        List<Occasion> periods = new ArrayList<>();
        LocalDate day = from.atZone(zone).toLocalDate();
        for (Instant at = from; !at.isAfter(now); at = day.atStartOfDay(zone).toInstant()) {
            periods.add(new Occasion(at, Optional.empty(), Optional.empty(), rule.points()));
            day = day.plusDays(rule.everyDays());
        }
        return periods;
    }

    private DueItem item(Rule rule, Occasion one, Optional<Instant> end) {
        Instant before = end.orElse(Instant.MAX);
        List<DueItem.Sample> samples = one.samples().stream()
                .map(what -> new DueItem.Sample(what, results.first(what, one.at(), before)))
                .toList();
        Instant by = one.at().plus(Duration.ofHours(rule.withinHours()));
        DueItem open = new DueItem(rule, one.at(), by, DueState.DUE, one.change(), one.about(), samples);
        return new DueItem(rule, one.at(), by, state(open, end), one.change(), one.about(), samples);
    }

    private DueState state(DueItem item, Optional<Instant> end) {
        if (item.missing().isEmpty()) {
            return DueState.DONE;
        }
        if (happened.excused().containsKey(item.key())) {
            return DueState.EXCUSED;
        }
        if (end.isPresent()) {
            return DueState.MISSED;
        }
        return now.isAfter(item.by()) ? DueState.OVERDUE : DueState.DUE;
    }
}
