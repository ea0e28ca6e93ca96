package wickbench.ledger.services;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;
import wickbench.ledger.InDoubt;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Review;
import wickbench.ledger.Signed;
import wickbench.ledger.Statement;
import wickbench.reading.RecordedReadingJson;

/** Results for machines. */
final class ResultJson {
    private ResultJson() {}

    static Json.Obj row(ResultRow row) {
        return Json.object()
                .with("id", row.id().toString())
                .with("entry", row.ref().toString())
                .with("recorded", row.recorded().toString())
                .with("recorded_by", row.recordedBy().value())
                .with("happened", row.happened().toString())
                .with("sample", row.sample())
                .with("place", row.place())
                .withText("line", row.line())
                .withText("batch", row.batch())
                .withText("reason", row.reason().map(Coded::code))
                .with("route", row.route().code())
                .with("method", row.method().id().value())
                .with("method_version", row.method().version())
                .with("target", row.target())
                .with("lot", row.lot().value())
                .with("operator", row.operator().value())
                .withText("started", row.started().map(Instant::toString))
                .withText("read", row.read().map(Instant::toString))
                .with("outcome", row.outcome().code())
                .with("sign", row.sign())
                .with("held", row.held())
                .with("in_doubt", row.inDoubt())
                .with("findings", row.findings())
                .withText("worst", row.worst().map(Coded::code))
                .withText("control", row.control().map(Coded::code))
                .with("dilution", row.dilution())
                .withText("sheet", row.sheet())
                .with("corrections", row.corrections())
                .with("corrected", row.corrected())
                .withOptional("signed", row.signed().map(ResultJson::signed))
                .with("stands_by", row.stands().toString())
                .withOptional("reviewed", row.reviewed().map(ResultJson::reviewed));
    }

    private static Json reviewed(Review review) {
        return Json.object()
                .with("by", review.by().value())
                .with("at", review.at().toString());
    }

    private static Json signed(Signed signed) {
        return Json.object()
                .with("by", signed.by().value())
                .with("at", signed.at().toString())
                .with("meaning", signed.meaning().code());
    }

    static Json.Obj detail(ResultDetail detail) {
        return row(detail.row())
                .with("stands", RecordedReadingJson.write(detail.reading()))
                .with(
                        "doubts",
                        Json.array(
                                detail.doubts().stream().map(ResultJson::doubt).toList()))
                .with(
                        "history",
                        Json.array(detail.history().stream()
                                .map(ResultJson::statement)
                                .toList()));
    }

    private static Json.Obj doubt(InDoubt doubt) {
        return Json.object()
                .with("entry", doubt.entry().toString())
                .with("id", doubt.id().toString())
                .with("cause", doubt.cause())
                .with("at", doubt.at().toString())
                .with(
                        "decisions",
                        Json.texts(
                                doubt.decisions().stream().map(Object::toString).toList()));
    }

    private static Json.Obj statement(Statement statement) {
        Optional<Json> reason = statement.reason().map(Json.Text::new);
        return Json.object()
                .with("entry", statement.entry().ref().toString())
                .with("id", statement.entry().id().toString())
                .with("at", statement.entry().at().toString())
                .with("by", statement.entry().by().value())
                .with("kind", statement.entry().kind())
                .withOptional("reason", reason)
                .with("outcome", statement.reading().verdict().outcome().code())
                .with("sign", statement.reading().verdict().sign())
                .with("counts", statement.counts())
                .withOptional("signed", Signed.under(statement.entry()).map(ResultJson::signed))
                .with("leaf", statement.entry().leaf().hex());
    }
}
