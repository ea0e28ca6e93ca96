package wickbench.plant.book;

import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Act;
import wickbench.api.authority.Actor;
import wickbench.api.json.Fields;
import wickbench.plant.PlantState;
import wickbench.plant.Thing;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesAsked;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validation;
import wickbench.plant.clean.Validity.Move;
import wickbench.plant.product.Product;
import wickbench.plant.product.WorstCase;
import wickbench.plant.terms.PlantWords;

/** Does what shows a clean to work, as far as its state allows. */
record Proving(Writing writing) {
    Series choose(SeriesAsked asked) {
        PlantState now = writing.now();
        Validation clean = known(now, asked.clean());
        Optional<WorstCase> worst =
                WorstCase.rank(
                                now.productsOf(clean.clean().line()),
                                clean.clean().removes())
                        .stream()
                        .findFirst();
        String chosen = asked.product()
                .or(() -> worst.map(each -> each.product().id()))
                .orElseThrow(() -> Said.wrong("--product", "worst.none", asked.clean()));
        Product product = now.product(chosen).orElseThrow(() -> Said.wrong("--product", "product.unknown", chosen));
        return new Series(
                asked.clean(),
                chosen,
                reasons(asked, worst.filter(each -> each.product().id().equals(chosen)), chosen),
                asked.allergens().isEmpty() ? product.allergens() : asked.allergens(),
                asked.points());
    }

    private static List<String> reasons(SeriesAsked asked, Optional<WorstCase> worst, String chosen) {
        if (!asked.reasons().isEmpty()) {
            return asked.reasons();
        }
        return worst.orElseThrow(() -> Said.wrong("--reason", "worst.why", chosen)).reasons().stream()
                .map(reason -> reason.code())
                .toList();
    }

    void open(Series series, Actor by) {
        Series.read(Fields.of(series.clean(), series.body())).orRefuse();
        move(series.clean(), Move.OPEN);
        writing.known(Thing.PRODUCT, series.product());
        series.points().forEach(point -> writing.known(Thing.POINT, point.place()));
        writing.write(Act.KEEP_PLANT, Series.KIND, series.body(), by);
    }

    void ran(SeriesRun run, Actor by) {
        move(run.clean(), Move.PASS);
        writing.past(run.at());
        writing.tell(SeriesRun.KIND, run.body(), by);
    }

    void confirm(Confirmed confirmed, Actor by) {
        Validation clean = move(confirmed.clean(), Move.CONFIRM);
        if (!clean.ready()) {
            throw Said.refused("validation.not-ready", confirmed.clean(), clean.passes(), Series.PASSES);
        }
        if (!confirmed
                .until()
                .isAfter(writing.book().now().atZone(writing.book().zone()).toLocalDate())) {
            throw Said.wrong("--until", "validation.until", confirmed.until());
        }
        writing.write(Act.VALIDATE_CLEAN, Confirmed.KIND, confirmed.body(), by);
    }

    void lapse(Changed changed, Actor by) {
        move(changed.clean(), Move.CHANGE);
        writing.write(
                Act.KEEP_PLANT, Changed.KIND, new Changed(changed.clean(), Said.reason(changed.reason())).body(), by);
    }

    private Validation move(String clean, Move move) {
        Validation found = known(writing.now(), clean);
        if (found.state().after(move).isEmpty()) {
            throw Said.refused(
                    "validation.move",
                    clean,
                    PlantWords.get("validity." + found.state().code()),
                    PlantWords.get("move." + move.code()));
        }
        return found;
    }

    private static Validation known(PlantState now, String clean) {
        return now.clean(clean).orElseThrow(() -> Said.wrong("CLEAN", "clean.unknown", clean));
    }
}
