package wickbench.bench.owed;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Neighbourhood;
import wickbench.api.owed.Settled;
import wickbench.api.owed.VisualCheck;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Cleaned;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Looked;
import wickbench.reading.owed.Fact.Named;
import wickbench.reading.owed.Fact.Spot;
import wickbench.reading.owed.Fact.Tested;

/** Reads the facts back, each reading as it stands after its corrections. */
final class FactTable {
    private FactTable() {}

    static long count(Rows rows) {
        return rows.first("SELECT COUNT(*) AS facts FROM fact", row -> row.whole("facts"))
                .orElse(0L);
    }

    static List<Fact> facts(Rows rows) {
        Map<UUID, Tested> tests = new LinkedHashMap<>();
        rows.read("SELECT * FROM fact WHERE kind = ? ORDER BY written, station, seq", TestedRow::read, TestedRow.KIND)
                .forEach(test -> tests.merge(test.id(), test, FactTable::corrected));
        List<Fact> facts = new ArrayList<>(tests.values());
        rows.read("SELECT * FROM fact WHERE kind <> ?", FactTable::other, TestedRow.KIND)
                .forEach(facts::addAll);
        return facts;
    }

    /** What a reading once held for is owed on, whatever a correction says. */
    private static Tested corrected(Tested before, Tested now) {
        boolean held = before.outcome().positive() || before.sign();
        Set<Owed> owed = EnumSet.noneOf(Owed.class);
        owed.addAll(now.owed());
        if (held) {
            owed.addAll(before.owed());
            owed.remove(Owed.REPEAT);
            owed.addAll(now.outcome() == Outcome.INVALID ? Set.of(Owed.REPEAT) : Set.of());
        }
        return new Tested(
                now.id(),
                now.at(),
                now.sample(),
                now.spot(),
                now.method(),
                now.lot(),
                now.operator(),
                now.dilution(),
                now.control(),
                now.reason(),
                now.outcome(),
                now.sign(),
                owed);
    }

    private static List<Fact> other(Row row) {
        UUID id = row.uuid("id");
        Instant at = row.instant("at");
        return switch (row.text("kind")) {
            case CleanDone.KIND -> List.of(new Cleaned(id, at, spot(row)));
            case VisualCheck.KIND -> List.of(new Looked(id, at, spot(row), Coded.of(Visual.class, row.text("what"))));
            case Neighbourhood.KIND -> List.of(new Named(id, at, row.uuid("target"), points(row)));
            case Settled.KIND -> List.of(decided(row, id, at));
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
