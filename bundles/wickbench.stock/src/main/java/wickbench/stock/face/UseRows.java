package wickbench.stock.face;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import wickbench.reading.OutcomeWords;
import wickbench.stock.Use;
import wickbench.stock.room.StockWords;

/** Results read with a lot, as rows; the same on screen, in a file and on paper. */
record UseRows(ZoneId zone) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    static List<String> columns() {
        return List.of("when", "sample", "place", "line", "batch", "method", "lot", "operator", "outcome", "entry");
    }

    static List<String> titles() {
        return columns().stream()
                .map(column -> StockWords.get("column." + column))
                .toList();
    }

    List<String> row(Use use) {
        return List.of(
                minute(use.taken()),
                use.sample(),
                use.place(),
                use.line().orElse(""),
                use.batch().orElse(""),
                use.method(),
                use.lot().value(),
                use.operator().value(),
                OutcomeWords.text(use.outcome()),
                use.ref().toString());
    }

    String minute(Instant at) {
        return MINUTE.format(at.atZone(zone));
    }
}
