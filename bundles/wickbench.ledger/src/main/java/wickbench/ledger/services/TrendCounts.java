package wickbench.ledger.services;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import wickbench.api.index.Index;
import wickbench.ledger.Filter;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.ledger.trend.Trending.Cell;
import wickbench.ledger.trend.Trending.Events;
import wickbench.ledger.trend.Trending.Mark;
import wickbench.ledger.trend.Trending.Rank;

/** Counts first tests after a clean: by point and week, by rank, and between one event and the next. */
record TrendCounts(Index index, ZoneId zone, Events events) {
    private static final double MINUTES_A_DAY = 1440;

    /** An event with what went before it since the one before. */
    record Between(Mark mark, long gap, double days) {}

    List<Cell> cells(Filter filter) {
        return index.read(LedgerView.NAME, rows -> tests(filter).cells(rows));
    }

    List<Behind> behind(Filter filter, Optional<LocalDate> monday, Optional<String> place) {
        return index.read(LedgerView.NAME, rows -> tests(filter).behind(rows, monday, place));
    }

    /** Only what says where, when and by what; a trend of Positives alone would be no trend. */
    private FirstTests tests(Filter filter) {
        Filter where = Filter.ALL
                .days(filter.from(), filter.to())
                .withLine(filter.line())
                .withPlace(filter.place())
                .withMethod(filter.method())
                .withTarget(filter.target());
        return new FirstTests(Condition.of(where, () -> zone), zone, events);
    }

    static List<Mark> weeks(List<Cell> cells) {
        Map<LocalDate, Mark> weeks = new TreeMap<>();
        cells.forEach(cell -> weeks.merge(
                cell.monday(),
                new Mark(
                        cell.monday().toString(),
                        cell.strips(),
                        cell.events(),
                        Optional.of(cell.monday()),
                        Optional.empty()),
                TrendCounts::both));
        return List.copyOf(weeks.values());
    }

    static Mark sum(List<Mark> marks) {
        return marks.stream().reduce(new Mark("", 0, 0, Optional.empty(), Optional.empty()), TrendCounts::both);
    }

    private static Mark both(Mark one, Mark other) {
        return new Mark(
                one.name(), one.strips() + other.strips(), one.events() + other.events(), one.monday(), one.result());
    }

    static List<Rank> ranked(List<Cell> cells, Function<Cell, String> by) {
        Map<String, Rank> ranks = new LinkedHashMap<>();
        cells.stream()
                .filter(cell -> !by.apply(cell).isEmpty())
                .forEach(cell -> ranks.merge(
                        by.apply(cell),
                        new Rank(by.apply(cell), cell.strips(), cell.events()),
                        (one, other) ->
                                new Rank(one.name(), one.strips() + other.strips(), one.events() + other.events())));
        return ranked(List.copyOf(ranks.values()));
    }

    private static List<Rank> ranked(List<Rank> ranks) {
        return ranks.stream()
                .sorted(Comparator.comparing(Rank::share).reversed().thenComparing(Rank::name))
                .toList();
    }

    /** Ranks methods or targets, by the name of the column. */
    List<Rank> by(String column, Filter filter) {
        return ranked(index.read(LedgerView.NAME, rows -> tests(filter).by(rows, column)));
    }

    List<Between> between(Filter filter) {
        List<FirstTests.Test> tests =
                index.read(LedgerView.NAME, rows -> tests(filter).inOrder(rows));
        SiteClock clock = new SiteClock(zone);
        List<Between> found = new ArrayList<>();
        Optional<Instant> last = Optional.empty();
        long good = 0;
        for (FirstTests.Test test : tests) {
            if (!test.event()) {
                good++;
                continue;
            }
            if (last.isPresent()) {
                double days = Duration.between(last.get(), test.at()).toMinutes() / MINUTES_A_DAY;
                found.add(new Between(mark(test, good + 1, clock), good, days));
            }
            last = Optional.of(test.at());
            good = 0;
        }
        return found;
    }

    private static Mark mark(FirstTests.Test test, long strips, SiteClock clock) {
        UUID result = test.result();
        return new Mark(clock.minute(test.at()), strips, 1, Optional.empty(), Optional.of(result));
    }
}
