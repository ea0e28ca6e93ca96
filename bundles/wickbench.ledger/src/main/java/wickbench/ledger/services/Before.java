package wickbench.ledger.services;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.index.Rows;
import wickbench.ledger.ResultRow;

/** What came before: the last good result of a point, what a line made since, what waits for its review. */
final class Before {
    private static final int LOOKED_AT = 100;

    private Before() {}

    static long unreviewed(Instant since, Rows rows) {
        return rows.first(
                        "select count(*) as results from statement where counts and reviewed = false and first_at < ? and "
                                + ReviewTable.WAITS + " < ?",
                        row -> row.whole("results"),
                        since,
                        since)
                .orElse(0L);
    }

    static Optional<ResultRow> lastGood(ResultRow before, Rows rows) {
        return rows
                .read(
                        Question.SELECT
                                + "counts and place = ? and method = ? and outcome = 'negative' and control = ''"
                                + " and held = false and dilution = ? and happened < ?"
                                + " order by place desc, happened desc, first_station desc, first_seq desc"
                                + " fetch first " + LOOKED_AT + " rows only",
                        Shape::row,
                        before.place(),
                        before.method().id().value(),
                        BigDecimal.ONE,
                        before.happened())
                .stream()
                .filter(row -> !row.inDoubt())
                .findFirst();
    }

    static List<String> batches(String line, Optional<Instant> after, Optional<Instant> until, Rows rows) {
        return rows.read(
                "select batch, min(happened) as first_tested from statement where counts and line = ? and batch <> ''"
                        + " and happened > ? and happened <= ? group by batch order by first_tested, batch",
                row -> row.text("batch"),
                line,
                after.orElse(Instant.EPOCH),
                until.orElse(Instant.parse("9999-12-31T23:59:59Z")));
    }
}
