package wickbench.ledger.services;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.method.Seen;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.words.Coded;

/** A reading as the cells of a run sheet, so that what is changed is read by the one reader of such cells. */
final class SheetCells {
    private static final int MILLIS = 3;

    private SheetCells() {}

    static Map<String, String> of(Reading reading) {
        Map<String, String> cells = new LinkedHashMap<>();
        sample(cells, reading.sample());
        cells.put("method", reading.method().value());
        cells.put("route", reading.route().code());
        cells.put("lot", reading.lot().value());
        cells.put("operator", reading.operator().value());
        times(cells, reading.times());
        cells.put("seen", seen(reading.strip()));
        return cells;
    }

    /** Returns a sheet of one row; every cell is quoted. */
    static String csv(Map<String, String> cells) {
        return row(cells.keySet()) + row(cells.values());
    }

    private static void sample(Map<String, String> cells, Sample sample) {
        cells.put("sample", sample.code());
        cells.put("place", sample.place());
        cells.put("line", sample.line().orElse(""));
        cells.put("batch", sample.batch().orElse(""));
        cells.put(
                "reason",
                sample.reasonText().or(() -> sample.reason().map(Reason::code)).orElse(""));
        cells.put("visual", code(sample.visual()));
        cells.put("area_cm2", sample.area().map(BigDecimal::toPlainString).orElse(""));
        cells.put("dilution", sample.dilution().toPlainString());
        cells.put("control", code(sample.control()));
    }

    private static void times(Map<String, String> cells, Times times) {
        cells.put("out_of_fridge", time(times.outOfFridge()));
        cells.put("extracted", time(times.extracted()));
        cells.put("shaken_s", times.shaken().map(SheetCells::seconds).orElse(""));
        cells.put("started", time(times.started()));
        cells.put("read", time(times.read()));
    }

    static String seen(Strip strip) {
        return strip.format().lines().stream()
                .filter(role -> strip.lines().get(role) != Seen.NOT_SEEN)
                .map(role -> mark(strip.lines().get(role)) + role.code())
                .collect(Collectors.joining(" "));
    }

    private static String mark(Seen seen) {
        return seen == Seen.FAINT ? "~" : seen == Seen.DAMAGED ? "!" : "";
    }

    private static String time(Optional<Instant> time) {
        return time.map(Instant::toString).orElse("");
    }

    private static String seconds(Duration span) {
        return BigDecimal.valueOf(span.toMillis(), MILLIS).stripTrailingZeros().toPlainString();
    }

    private static String code(Optional<? extends Coded> choice) {
        return choice.map(Coded::code).orElse("");
    }

    private static String row(Iterable<String> cells) {
        StringBuilder row = new StringBuilder();
        for (String cell : cells) {
            row.append(row.isEmpty() ? "" : ",")
                    .append('"')
                    .append(cell.replace("\"", "\"\""))
                    .append('"');
        }
        return row.append("\r\n").toString();
    }
}
