package wickbench.ledger.services;

import java.util.List;
import java.util.UUID;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.owed.OwedItem;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.No;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Taken;

/** What people act on, for machines. */
final class ActsJson {
    private ActsJson() {}

    static Json of(Case each) {
        return Json.object()
                .with("result", ResultJson.row(each.result()))
                .withOptional(
                        "last_good",
                        each.lastGood()
                                .map(good -> Json.object()
                                        .with("result", good.result().toString())
                                        .with("at", good.at().toString())))
                .with("products", list(each.products(), ActsJson::product))
                .withText("cause", each.cause())
                .with("owed", list(each.owed(), ActsJson::owed))
                .with("outside", list(each.outside(), Outside::body))
                .with("decisions", list(each.taken(), ActsJson::taken))
                .with("clash", each.clash())
                .with("open", each.open());
    }

    static Json of(Standing standing) {
        return Json.object()
                .with("sort", standing.subject().sort().code())
                .with("name", standing.subject().name())
                .with("may_go", standing.mayGo())
                .with("called_back", standing.calledBack())
                .with("reasons", list(standing.reasons(), ActsJson::no))
                .with("points", list(standing.points(), ActsJson::point))
                .with("results", list(standing.results(), ResultJson::row))
                .with("cases", list(standing.cases(), ActsJson::of))
                .with("owed", list(standing.owed(), ActsJson::owed))
                .with("outside", list(standing.outside(), Outside::body))
                .with("released", list(standing.released(), ActsJson::entry));
    }

    private static Json product(Product product) {
        return Json.object()
                .with("name", product.name())
                .with("state", product.state().code())
                .with("since", product.since().toString());
    }

    private static Json owed(OwedItem item) {
        return Json.object()
                .with("owes", item.owes().toString())
                .with("step", item.step().code())
                .with("since", item.since().toString())
                .with(
                        "answers",
                        Json.texts(item.answers().stream().map(UUID::toString).toList()))
                .with("done", item.done());
    }

    private static Json taken(Taken taken) {
        return entry(taken.entry())
                .with("stands", taken.stands())
                .with("decided", taken.decided().body());
    }

    private static Json no(No reason) {
        return Json.object().with("code", reason.code()).with("text", reason.text());
    }

    private static Json point(Standing.Tested tested) {
        return Json.object()
                .with("place", tested.point().place())
                .with("method", tested.point().method().value())
                .with("good", tested.good())
                .withText("result", tested.result().map(row -> row.id().toString()));
    }

    private static Json.Obj entry(Entry entry) {
        return Json.object()
                .with("entry", entry.ref().toString())
                .with("id", entry.id().toString())
                .with("at", entry.at().toString())
                .with("by", entry.by().value());
    }

    private static <T> Json list(List<T> items, java.util.function.Function<T, Json> shape) {
        return Json.array(items.stream().map(shape).toList());
    }
}
