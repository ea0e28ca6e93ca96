package wickbench.bench.owed;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.Ordered;
import wickbench.api.owed.Settled;
import wickbench.api.owed.VisualCheck;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Cleaned;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Spot;

/** Reads the facts back, row by row. */
final class FactTable {
    private FactTable() {}

    static long count(Rows rows) {
        return rows.first("SELECT COUNT(*) AS facts FROM fact", row -> row.whole("facts"))
                .orElse(0L);
    }

    static List<FactRow> all(Rows rows) {
        return rows.read("SELECT * FROM fact ORDER BY station, seq", FactTable::row);
    }

    /** Returns what a station has told since. */
    static List<FactRow> after(String station, long seq, Rows rows) {
        return rows.read("SELECT * FROM fact WHERE station = ? AND seq > ? ORDER BY seq", FactTable::row, station, seq);
    }

    private static FactRow row(Row row) {
        List<Fact> facts = row.text("kind").equals(TestedRow.KIND) ? List.of(TestedRow.read(row)) : other(row);
        return new FactRow(row.instant("written"), row.text("station"), row.whole("seq"), facts);
    }

    private static List<Fact> other(Row row) {
        UUID id = row.uuid("id");
        Instant at = row.instant("at");
        return switch (row.text("kind")) {
            case CleanDone.KIND -> List.of(new Cleaned(id, at, spot(row)));
            case VisualCheck.KIND -> List.of(new Looked(id, at, spot(row), Coded.of(Visual.class, row.text("what"))));
            case Neighbourhood.KIND -> List.of(new Named(id, at, row.uuid("target"), points(row)));
            // what is ordered stands with the test that owes it
            case Ordered.KIND -> List.of();
            case Settled.KIND -> List.of(decided(row, id, at));
            case SiteRow.RULE -> List.of(SiteRow.rule(row, id, at));
            case SiteRow.RUN -> List.of(SiteRow.run(row, id, at));
            default -> DoubtRow.read(row, id, at);
        };
    }

    private static Decided decided(Row row, UUID id, Instant at) {
        List<UUID> about = points(row).stream().map(UUID::fromString).toList();
        return new Decided(id, at, row.uuid("target"), Coded.of(Owed.class, row.text("what")), about);
    }

    private static Spot spot(Row row) {
        return new Spot(row.text("place"), row.optionalText("line"));
    }

    private static List<String> points(Row row) {
        String points = row.text("points");
        return points.isEmpty() ? List.of() : List.of(points.split(OwedView.BETWEEN));
    }
}
