package wickbench.figures.commands;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.figures.NoAnswer;
import wickbench.figures.store.Spell;
import wickbench.figures.store.Trace;

/**
 * A table of temperatures: hours and °C, or times and °C, with or without a header.
 *
 * @param lines the rows, for complaints
 * @param times when each was read; empty when the first column holds hours
 * @param withoutOffset the times name no offset from UTC
 */
record TraceFile(Table lines, List<Instant> times, boolean withoutOffset) {

    static TraceFile read(Path file) {
        TableText text = TableFile.text(file);
        List<TableText.Line> lines = text.lines();
        boolean headed = !lines.isEmpty() && TableFile.isHeader(lines.get(0).cells());
        List<TableText.Line> rows = lines.subList(headed ? 1 : 0, lines.size());
        return rows.isEmpty() || TableFile.isNumber(rows.get(0).cells().get(0))
                ? new TraceFile(TableFile.read(file, "hours", "celsius"), List.of(), false)
                : timed(text, rows);
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
        for (int i = 0; i < lines.size(); i++) {
            double[] cells = lines.rows().get(i).cells();
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
            return new Trace.Reading(times.get(row), lines.rows().get(row).cells()[0]);
        } catch (NoAnswer none) {
            throw none.inRow(row);
        }
    }

    private static TraceFile timed(TableText text, List<TableText.Line> rows) {
        boolean local = isLocal(rows.get(0).cells().get(0));
        List<Instant> times = new ArrayList<>();
        List<Table.Row> temperatures = new ArrayList<>();
        for (TableText.Line line : rows) {
            if (line.cells().size() != 2) {
                throw complaint(
                        text,
                        line,
                        FiguresWords.get("table.cell-count", line.cells().size(), 2));
            }
            times.add(time(text, line, local));
            double celsius = TableFile.number(text, line, line.cells().get(1));
            temperatures.add(new Table.Row(line.number(), new double[] {celsius}));
        }
        return new TraceFile(new Table(text.source(), temperatures), times, local);
    }

    private static Instant time(TableText text, TableText.Line line, boolean local) {
        String cell = line.cells().get(0).replace(' ', 'T');
        try {
            return local
                    ? LocalDateTime.parse(cell).toInstant(ZoneOffset.UTC)
                    : OffsetDateTime.parse(cell).toInstant();
        } catch (DateTimeException e) {
            String expected = local ? "warmth.time-expected" : "warmth.time-with-offset-expected";
            throw complaint(text, line, FiguresWords.get(expected, line.cells().get(0)));
        }
    }

    private static boolean isLocal(String cell) {
        return !cell.matches(".*(Z|[+-]\\d\\d:\\d\\d)");
    }

    private static BadInput complaint(TableText text, TableText.Line line, String what) {
        return new BadInput(Complaint.at(text.source(), line.number(), "", what));
    }
}
