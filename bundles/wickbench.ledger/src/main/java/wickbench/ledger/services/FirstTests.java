package wickbench.ledger.services;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;
import wickbench.ledger.trend.Trending;
import wickbench.ledger.trend.Trending.Behind;
import wickbench.ledger.trend.Trending.Cell;
import wickbench.ledger.trend.Trending.Events;
import wickbench.ledger.trend.Trending.Rank;

/** The first tests after a clean, in SQL: of each point by each method the first strip for a batch, or, where none is named, of a day. */
record FirstTests(List<Condition> conditions, ZoneId zone, Events events) {

    /** One strip in the order of time. */
    record Test(Instant at, boolean event, UUID result) {}

    List<Cell> cells(Rows rows) {
        return rows.read(
                "select place, line, extract(iso_week_year from local) as iso_year, extract(iso_week from local) as iso_week,"
                        + " count(*) as strips, count(*) filter (where " + event() + ") as events from (" + first()
                        + ") group by place, line, iso_year, iso_week order by place, line, iso_year, iso_week",
                FirstTests::cell,
                values());
    }

    /** Counts by method or target. */
    List<Rank> by(Rows rows, String column) {
        return rows.read(
                "select " + column + " as name, count(*) as strips, count(*) filter (where " + event()
                        + ") as events from (" + first() + ") group by " + column + " order by " + column,
                row -> new Rank(row.text("name"), row.whole("strips"), row.whole("events")),
                values());
    }

    List<Test> inOrder(Rows rows) {
        return rows.read(
                "select happened, result, (" + event() + ") as event from (" + first()
                        + ") order by happened, first_station, first_seq",
                row -> new Test(row.instant("happened"), row.flag("event"), row.uuid("result")),
                values());
    }

    /** Lists the strips themselves, of one week or point or of all. */
    List<Behind> behind(Rows rows, Optional<LocalDate> monday, Optional<String> place) {
        List<Object> values = new ArrayList<>(List.of(values()));
        String week = monday.isPresent() ? " and cast(local as date) between ? and ?" : "";
        monday.ifPresent(day -> values.addAll(List.of(day, day.plusDays(6))));
        String point = place.isPresent() ? " and place = ?" : "";
        place.ifPresent(values::add);
        return rows.read(
                "select result, happened, sample, place, outcome, (" + event() + ") as event from (" + first()
                        + ") where 1 = 1" + week + point
                        + " order by happened, first_station, first_seq fetch first " + Trending.MOST_BEHIND
                        + " rows only",
                FirstTests::strip,
                values.toArray());
    }

    private static Behind strip(Row row) {
        return new Behind(
                row.uuid("result"),
                row.instant("happened"),
                row.text("sample"),
                row.text("place"),
                Coded.of(Outcome.class, row.text("outcome")),
                row.flag("event"));
    }

    private String event() {
        return events == Events.INVALID
                ? "outcome = '" + Outcome.INVALID.code() + "'"
                : "outcome in (" + Weeks.POSITIVE + ")";
    }

    private String first() {
        return "select * from (select result, sample, place, line, method, target, happened, outcome, first_station, first_seq, local, row_number() over"
                + " (partition by place, method, batch, case when batch = '' then cast(local as date) end"
                + " order by happened, first_station, first_seq) as nth from (select statement.*,"
                + " happened at time zone ? as local from statement where " + Question.where(all())
                + ")) where nth = 1";
    }

    private List<Condition> all() {
        List<Condition> all = new ArrayList<>(conditions);
        all.add(said("control = ''"));
        all.add(said("dilution = 1"));
        all.add(said("why in ('changeover', 'after-cleaning')"));
        if (events == Events.POSITIVE) {
            all.add(said("outcome <> '" + Outcome.INVALID.code() + "'"));
        }
        return all;
    }

    private static Condition said(String sql) {
        return new Condition(Optional.empty(), sql, List.of());
    }

    private Object[] values() {
        return Stream.concat(Stream.of(zone.getId()), conditions.stream().flatMap(each -> each.values().stream()))
                .toArray();
    }

    private static Cell cell(Row row) {
        LocalDate monday = Weeks.monday(row.whole("iso_year"), row.whole("iso_week"));
        return new Cell(row.text("place"), row.text("line"), monday, row.whole("strips"), row.whole("events"));
    }
}
