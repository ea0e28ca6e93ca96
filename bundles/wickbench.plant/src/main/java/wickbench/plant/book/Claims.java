package wickbench.plant.book;

import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.clash.Decision;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.plant.Retired;
import wickbench.plant.Stated;
import wickbench.plant.changeover.Disputes;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Clean;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.product.Product;
import wickbench.plant.programme.Rule;
import wickbench.plant.site.Line;
import wickbench.plant.site.Point;

/** What an entry states of the plant that another station may state otherwise. */
final class Claims {
    private static final String GONE = "retired";

    private Claims() {}

    /** Empty for what has happened, which no two stations decide, and for the picture, of which the newest is shown. */
    static Optional<Decision> of(Entry entry) {
        if (!Kinds.knows(entry.kind(), entry.v())) {
            return Optional.empty();
        }
        Checked<?> read = Kinds.read(entry.kind(), Fields.of(entry.ref().toString(), entry.body()));
        return read instanceof Checked.Good<?> good ? of(good.value()) : Optional.empty();
    }

    private static Optional<Decision> of(Object what) {
        if (what instanceof Retired retired) {
            return Optional.of(new Decision(Disputes.subject(retired.what().code(), retired.id()), GONE));
        }
        if (what instanceof Series series) {
            return validation(series.clean(), series.body().canonical());
        }
        if (what instanceof Confirmed confirmed) {
            return validation(confirmed.clean(), Confirmed.KIND + " " + confirmed.until());
        }
        if (what instanceof Changed changed) {
            return validation(changed.clean(), Changed.KIND);
        }
        return stated(what)
                .map(said -> new Decision(
                        Disputes.subject(said.what().code(), said.id()),
                        said.body().canonical()));
    }

    private static Optional<Decision> validation(String clean, String claim) {
        return Optional.of(new Decision(Disputes.validation(clean), claim));
    }

    private static Optional<Stated.Said> stated(Object what) {
        if (what instanceof Line line) {
            return one(Stated.of(line));
        } else if (what instanceof Point point) {
            return one(Stated.of(point));
        } else if (what instanceof Product product) {
            return one(Stated.of(product));
        } else if (what instanceof Clean clean) {
            return one(Stated.of(clean));
        } else if (what instanceof Rule rule) {
            return one(Stated.of(rule));
        }
        return Optional.empty();
    }

    private static Optional<Stated.Said> one(Stated things) {
        return things.all().stream().findFirst();
    }
}
