package wickbench.ledger.services;

import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.index.Row;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.StationId;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Severity;
import wickbench.api.words.Coded;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Review;
import wickbench.ledger.Signed;

/** Turns a row of the table into a result. */
final class Shape {
    private Shape() {}

    static ResultRow row(Row row) {
        return new ResultRow(
                row.uuid("result"),
                new EntryRef(new StationId(row.text("first_station")), row.whole("first_seq")),
                row.instant("first_at"),
                new PersonId(row.text("first_by")),
                row.instant("happened"),
                row.text("sample"),
                row.text("place"),
                stated(row, "line"),
                stated(row, "batch"),
                choice(row, "why", Reason.class),
                Coded.of(Route.class, row.text("route")),
                new MethodRef(new MethodId(row.text("method")), Math.toIntExact(row.whole("method_version"))),
                row.text("target"),
                new LotId(row.text("lot")),
                new PersonId(row.text("operator")),
                row.optionalInstant("started"),
                row.optionalInstant("read_at"),
                Coded.of(Outcome.class, row.text("outcome")),
                row.flag("sign"),
                row.flag("held"),
                row.flag("in_doubt"),
                row.whole("findings"),
                choice(row, "worst", Severity.class),
                choice(row, "control", RunControl.class),
                row.decimal("dilution").stripTrailingZeros(),
                stated(row, "sheet"),
                row.whole("corrections"),
                !row.flag("recording"),
                signed(row),
                row.uuid("id"),
                row.instant("waits"),
                reviewed(row));
    }

    private static Optional<Signed> signed(Row row) {
        return stated(row, "signed_by")
                .map(by -> new Signed(
                        new PersonId(by), row.instant("signed_at"), Coded.of(Act.class, row.text("signed_for"))));
    }

    private static Optional<Review> reviewed(Row row) {
        return stated(row, "reviewed_by").map(by -> new Review(new PersonId(by), row.instant("reviewed_at")));
    }

    private static Optional<String> stated(Row row, String column) {
        return Optional.of(row.text(column)).filter(text -> !text.isEmpty());
    }

    private static <E extends Enum<E> & Coded> Optional<E> choice(Row row, String column, Class<E> type) {
        return stated(row, column).map(code -> Coded.of(type, code));
    }
}
