package wickbench.ledger.services;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.reading.Outcome;
import wickbench.ledger.Week;

/** Counts results by week in SQL. */
record Weeks(List<Condition> conditions, ZoneId zone) {
    static final String POSITIVE = Arrays.stream(Outcome.values())
            .filter(Outcome::positive)
            .map(outcome -> "'" + outcome.code() + "'")
            .collect(Collectors.joining(", "));

    List<Week> count(Rows rows) {
        Object[] values = Stream.concat(
                        Stream.of(zone.getId()), conditions.stream().flatMap(each -> each.values().stream()))
                .toArray();
        return withoutHoles(rows.read(
                "select iso_year, iso_week, count(*) as strips, count(*) filter (where outcome in (" + POSITIVE
                        + ")) as positives, count(*) filter (where outcome = '" + Outcome.INVALID.code()
                        + "') as invalids from (select extract(iso_week_year from local) as iso_year,"
                        + " extract(iso_week from local) as iso_week, outcome from (select happened at time zone ?"
                        + " as local, outcome from statement where " + Question.where(conditions)
                        // a run's own controls tell of the kit, not of the plant
                        + " and control = '')) group by iso_year, iso_week order by iso_year, iso_week",
                Weeks::week,
                values));
    }

    private static Week week(Row row) {
        return new Week(
                monday(row.whole("iso_year"), row.whole("iso_week")),
                row.whole("strips"),
                row.whole("positives"),
                row.whole("invalids"));
    }

    static LocalDate monday(long year, long week) {
        // the 4th of January is always in week 1
        return LocalDate.of((int) year, 1, 4)
                .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, week)
                .with(DayOfWeek.MONDAY);
    }

    private static List<Week> withoutHoles(List<Week> found) {
        List<Week> all = new ArrayList<>();
        for (Week week : found) {
            while (!all.isEmpty() && next(all).monday().isBefore(week.monday())) {
                all.add(next(all));
            }
            all.add(week);
        }
        return all;
    }

    private static Week next(List<Week> all) {
        return new Week(all.get(all.size() - 1).monday().plusWeeks(1), 0, 0, 0);
    }
}
