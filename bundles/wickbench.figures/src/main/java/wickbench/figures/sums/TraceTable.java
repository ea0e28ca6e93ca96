package wickbench.figures.sums;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.figures.NoAnswer;
import wickbench.figures.store.Spell;
import wickbench.figures.store.Trace;

/**
 * A table of temperatures: hours and °C, or times and °C, with or without a header.
 *
 * @param rows hours and temperatures; of times the temperatures alone
 * @param times when each was read; empty when the first column holds hours
 * @param withoutOffset the times name no offset from UTC
 */
record TraceTable(Table rows, List<Instant> times, boolean withoutOffset) {
    private static final String INPUT = "temperatures";

    static TraceTable of(TableText text) {
        TableReader reader = new TableReader(INPUT, text);
        List<TableText.Line> body = text.body();
        boolean hours = body.isEmpty() || Numbers.of(body.get(0).cells().get(0)).isPresent();
        return hours
                ? new TraceTable(reader.table(List.of("hours", "celsius")), List.of(), false)
                : timed(reader, body);
    }

    /** Lays the temperatures out in time; rows of hours have no gaps. */
    Trace trace(Optional<Double> gap) {
        if (times.isEmpty()) {
            return new Trace(spells(), 0, 0, 0);
        }
        List<Trace.Reading> readings = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            readings.add(reading(i));
        }
        return gap.map(longest -> Trace.of(readings, longest)).orElseGet(() -> Trace.of(readings));
    }

    private List<Spell> spells() {
        List<Spell> spells = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            double[] cells = rows.rows().get(i).cells();
            try {
                spells.add(new Spell(cells[0], cells[1]));
            } catch (NoAnswer none) {
                throw none.inRow(i);
            }
        }
        return spells;
    }

    private Trace.Reading reading(int row) {
        try {
            return new Trace.Reading(times.get(row), rows.rows().get(row).cells()[0]);
        } catch (NoAnswer none) {
            throw none.inRow(row);
        }
    }

    private static TraceTable timed(TableReader reader, List<TableText.Line> body) {
        boolean local = isLocal(body.get(0).cells().get(0));
        List<Instant> times = new ArrayList<>();
        List<Table.Row> temperatures = new ArrayList<>();
        for (TableText.Line line : body) {
            if (line.cells().size() != 2) {
                throw reader.complaint(line, "table.cell-count", line.cells().size(), 2);
            }
            times.add(time(reader, line, local));
            double celsius = reader.number(line, line.cells().get(1));
            temperatures.add(new Table.Row(line.number(), new double[] {celsius}));
        }
        return new TraceTable(new Table(INPUT, reader.text(), temperatures), times, local);
    }

    private static Instant time(TableReader reader, TableText.Line line, boolean local) {
        String cell = line.cells().get(0).replace(' ', 'T');
        try {
            return local
                    ? LocalDateTime.parse(cell).toInstant(ZoneOffset.UTC)
                    : OffsetDateTime.parse(cell).toInstant();
        } catch (DateTimeException e) {
            String expected = local ? "warmth.time-expected" : "warmth.time-with-offset-expected";
            throw reader.complaint(line, expected, line.cells().get(0));
        }
    }

    private static boolean isLocal(String cell) {
        return !cell.matches(".*(Z|[+-]\\d\\d:\\d\\d)");
    }
}
