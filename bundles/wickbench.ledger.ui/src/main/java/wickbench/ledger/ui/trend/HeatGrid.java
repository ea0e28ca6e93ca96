package wickbench.ledger.ui.trend;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import wickbench.ledger.trend.Trending.Cell;
import wickbench.ledger.trend.Trending.Rank;

/**
 * What was counted where and when.
 *
 * @param places the highest share first
 * @param weeks their Mondays, none left out
 */
record HeatGrid(List<String> places, List<LocalDate> weeks, Map<String, Map<LocalDate, Count>> counts) {

    /** Of so many strips so many had the event. */
    record Count(long events, long strips) {
        double share() {
            return (double) events / strips;
        }

        String words() {
            return events + "/" + strips;
        }

        Count and(Count other) {
            return new Count(events + other.events, strips + other.strips);
        }
    }

    static HeatGrid of(List<Cell> cells, List<Rank> ranks) {
        Map<String, Map<LocalDate, Count>> counts = new HashMap<>();
        TreeSet<LocalDate> tested = new TreeSet<>();
        for (Cell cell : cells) {
            tested.add(cell.monday());
            counts.computeIfAbsent(cell.place(), place -> new HashMap<>())
                    .merge(cell.monday(), new Count(cell.events(), cell.strips()), Count::and);
        }
        return new HeatGrid(
                ranks.stream().map(Rank::name).toList(),
                tested.isEmpty()
                        ? List.of()
                        : tested.first()
                                .datesUntil(tested.last().plusDays(1), java.time.Period.ofWeeks(1))
                                .toList(),
                counts);
    }

    boolean empty() {
        return places.isEmpty() || weeks.isEmpty();
    }

    Optional<Count> at(String place, LocalDate monday) {
        return Optional.ofNullable(counts.getOrDefault(place, Map.of()).get(monday));
    }

    /** Returns the number of a week, as people at a plant call it. */
    String week(LocalDate monday) {
        return TrendWords.get("heat.week", monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }
}
