package wickbench.ledger.services;

import java.time.Instant;
import java.util.UUID;
import wickbench.api.index.Rows;
import wickbench.api.journal.Entry;
import wickbench.ledger.Reviewed;

/** Who reviewed which statement: a row each. The first counts, and is written beside the statement, whichever came first. */
final class ReviewTable {
    static final String MADE = "create table review (statement uuid not null, at timestamp(3) with time zone not null,"
            + " station varchar(32) not null, seq bigint not null, reviewer varchar(32) not null,"
            + " primary key (statement, at, station, seq))";

    /** Since when a review is waited for: what was reviewed before it was corrected waits since it was corrected. */
    static final String WAITS = "case when corrections > 0 and exists (select 1 from statement earlier"
            + " where earlier.result = statement.result and earlier.reviewed) then at else first_at end";

    private ReviewTable() {}

    /** A review as kept. */
    private record Kept(String by, Instant at) {}

    static void take(Entry entry, Reviewed review, Rows rows) {
        review.statements().stream().distinct().forEach(statement -> {
            rows.write(
                    "insert into review (statement, at, station, seq, reviewer) values (?, ?, ?, ?, ?)",
                    statement,
                    entry.at(),
                    entry.ref().station().value(),
                    entry.ref().seq(),
                    entry.by().value());
            mark(statement, rows);
        });
    }

    static void mark(UUID statement, Rows rows) {
        rows.first(
                        "select reviewer, at from review where statement = ? order by at, station, seq"
                                + " fetch first 1 row only",
                        row -> new Kept(row.text("reviewer"), row.instant("at")),
                        statement)
                .ifPresent(kept -> rows.write(
                        "update statement set reviewed = true, reviewed_by = ?, reviewed_at = ? where id = ?",
                        kept.by(),
                        kept.at(),
                        statement));
    }
}
