package wickbench.stock.face;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.stock.Balance;
import wickbench.stock.Clash;
import wickbench.stock.Excursion;
import wickbench.stock.Happening;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.Outlook;
import wickbench.stock.Quarantine;
import wickbench.stock.Use;

/** What machines read of the stock room. */
final class LotJson {
    private static final int DIGITS = 10;

    private LotJson() {}

    static Json.Obj lot(Lot lot, LocalDate today) {
        return Json.object()
                .with("lot", lot.id().value())
                .with("kit", lot.kit().name())
                .with("state", lot.state().code())
                .with("expired", lot.expired(today))
                .with("label_expiry", lot.label().toString())
                .with("effective_expiry", lot.effective().toString())
                .with("expires_by", lot.why())
                .with("days_left", lot.daysLeft(today))
                .with("received", lot.received().toString())
                .withText("checked", lot.checked().map(Instant::toString))
                .with("check_waived", lot.waived())
                .withText("opened", lot.opened().map(Instant::toString))
                .withText("pouch_opened", lot.pouch().map(Instant::toString))
                .withText("place", lot.place())
                .withText("insert_revision", lot.insert())
                .with("method_inserts", Json.texts(lot.inserts()))
                .with("other_insert", lot.otherInsert())
                .with("sealed_pouches", lot.sealedPouches())
                .with("unrecorded_pouches", lot.unrecordedPouches())
                .with("parts", array(lot.parts().stream().map(LotJson::balance).toList()))
                .with(
                        "quarantines",
                        array(lot.quarantines().stream()
                                .map(LotJson::quarantine)
                                .toList()))
                .with(
                        "clashes",
                        array(lot.clashes().stream().map(LotJson::clash).toList()));
    }

    private static Json.Arr array(List<Json.Obj> items) {
        return Json.array(items);
    }

    private static Json.Obj balance(Balance balance) {
        return Json.object()
                .with("part", balance.part().name())
                .with("unit", balance.part().unit())
                .with("left", balance.left())
                .with("sealed", balance.sealed())
                .with("open", balance.open())
                .with("missing", balance.missing());
    }

    private static Json.Obj quarantine(Quarantine quarantine) {
        return Json.object()
                .with("entry", quarantine.entry().toString())
                .with("at", quarantine.at().toString())
                .with("cause", quarantine.cause().code())
                .with("reason", quarantine.reason());
    }

    private static Json.Obj clash(Clash clash) {
        return Json.object()
                .with("entry", clash.entry().toString())
                .with("code", clash.code())
                .with("claimed", clash.claimed())
                .with("stands", clash.stands());
    }

    static Json.Obj happening(Happening happening) {
        Json.Obj facts = Json.object();
        for (var each : happening.facts().entrySet()) {
            facts = facts.with(each.getKey(), each.getValue());
        }
        return Json.object()
                .with("entry", happening.entry().ref().toString())
                .with("kind", happening.entry().kind())
                .with("at", happening.at().toString())
                .with("by", happening.entry().by().value())
                .with("signed", happening.signed())
                .with("facts", facts);
    }

    static Json.Obj check(LotId lot, LotCheck check) {
        return Json.object()
                .with("lot", lot.value())
                .with("passed", check.passed())
                .with("blanks", check.blanks())
                .with("low_positives", check.lowPositives())
                .with("wrong", check.wrong())
                .with("invalid", check.invalid())
                .with(
                        "readings",
                        Json.texts(
                                check.readings().stream().map(Object::toString).toList()));
    }

    static Json.Obj use(Use use) {
        return Json.object()
                .with("result", use.result().toString())
                .with("entry", use.ref().toString())
                .with("lot", use.lot().value())
                .with("kit", use.kit())
                .with("method", use.method())
                .with("taken", use.taken().toString())
                .with("sample", use.sample())
                .with("place", use.place())
                .withText("line", use.line())
                .withText("batch", use.batch())
                .with("operator", use.operator().value())
                .with("outcome", use.outcome().code())
                .with("sign", use.sign())
                .withText("control", use.control());
    }

    static Json.Obj outlook(Outlook outlook) {
        return Json.object()
                .with("kit", outlook.kit())
                .with("method", outlook.method())
                .with("days", outlook.days())
                .with("demand_per_day", rounded(outlook.demand()))
                .with("deviation", rounded(outlook.deviation()))
                .with("strips", outlook.strips())
                .with("reorder_point", rounded(outlook.point()))
                .with("safety", rounded(outlook.safety()))
                .withText("runs_out", outlook.runsOut().map(LocalDate::toString))
                .withText("order_by", outlook.orderBy().map(LocalDate::toString))
                .with("boxes", outlook.boxes())
                .with(
                        "steps",
                        array(outlook.steps().stream()
                                .map(step -> Json.object()
                                        .with("day", step.day().toString())
                                        .with("strips", rounded(step.strips())))
                                .toList()))
                .with(
                        "expires_unused",
                        array(outlook.waste().stream()
                                .map(waste -> Json.object()
                                        .with("lot", waste.lot())
                                        .with("expiry", waste.expiry().toString())
                                        .with("strips", waste.strips()))
                                .toList()));
    }

    static Json.Obj excursion(Excursion each) {
        return Json.object()
                .with("cause", each.cause().code())
                .with("from", each.from().toString())
                .with("to", each.to().toString())
                .with("minutes", each.length().toMinutes())
                .with("peak", rounded(each.peak()))
                .with("degree_hours", rounded(each.degreeHours()));
    }

    static BigDecimal rounded(double value) {
        return new BigDecimal(value).round(new java.math.MathContext(DIGITS, java.math.RoundingMode.HALF_UP));
    }
}
