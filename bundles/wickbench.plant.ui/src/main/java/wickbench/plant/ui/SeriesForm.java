package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.plant.clean.Clean;
import wickbench.plant.clean.Series;
import wickbench.plant.clean.SeriesAsked;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Product;
import wickbench.plant.product.WorstCase;
import wickbench.plant.site.Sampling;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.ProductWords;
import wickbench.shell.ActForm;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** Opens a series by which a clean is shown to work: its worst case, what it is for, and the points. */
final class SeriesForm {
    private final Stand stand;
    private final Clean clean;
    private final ActForm form;
    private final List<WorstCase> ranked;
    private final Field<Combo> product;
    private final Field<Text> reason;
    private Ticks<String> allergens;
    private Ticks<Sampling> points;

    private SeriesForm(Stand stand, ActForm form, Validation before) {
        this.stand = stand;
        this.form = form;
        clean = before.clean();
        ranked = WorstCase.rank(stand.plant().productsOf(clean.line()), clean.removes());
        product = form.choice(
                "series.product",
                ranked.stream().map(each -> each.product().name()).toList());
        product.control().addListener(SWT.Selection, event -> why());
        reason = form.text("series.reason");
        Set<String> asked = allergens();
        form.field("series.for", parent -> {
            allergens = new Ticks<>(parent, stand.context().theme(), asked, ChangeWords::name, asked);
            return allergens.control();
        });
        form.field("series.points", parent -> {
            points = Samplings.ticks(
                    parent,
                    stand,
                    clean.line(),
                    before.series().map(Series::points).orElse(List.of()));
            return points.control();
        });
        if (!ranked.isEmpty()) {
            product.control().select(0);
            why();
        }
        form.act(
                "series.act",
                stand.may().permission(),
                this::collect,
                opened -> stand.said("series.done", clean.id()).accept(opened));
    }

    static void open(Stand stand, Validation clean) {
        stand.open(
                "series",
                form -> new SeriesForm(stand, form, clean),
                clean.clean().id(),
                clean.clean().name(),
                Series.PASSES);
    }

    /** What the clean is meant for, as far as a product of the line holds it. */
    private Set<String> allergens() {
        Set<String> held = new TreeSet<>();
        ranked.forEach(each -> held.addAll(each.product().allergens()));
        if (!clean.removes().isEmpty()) {
            held.retainAll(clean.removes());
        }
        return held;
    }

    /** Says below the product why it is the hardest, or that a reason is asked for. */
    private void why() {
        int at = product.control().getSelectionIndex();
        product.hint(at == 0 ? ProductWords.reasons(ranked.get(0)) : PlantUiWords.get("series.another"));
        reason.control().setMessage(PlantUiWords.get(at == 0 ? "series.none-needed" : "series.needed"));
    }

    private Optional<Work<Boolean>> collect() {
        int at = product.control().getSelectionIndex();
        if (at < 0 || points.chosen().isEmpty() || allergens.chosen().isEmpty()) {
            form.refuse(PlantUiWords.get("series.missing"));
            return Optional.empty();
        }
        if (at > 0 && Typed.words(reason).isEmpty()) {
            return Optional.empty();
        }
        Product worst = ranked.get(at).product();
        SeriesAsked asked = new SeriesAsked(
                clean.id(),
                Optional.of(worst.id()),
                Typed.some(reason).stream().toList(),
                Set.copyOf(allergens.chosen()),
                points.chosen());
        return stand.work(by -> {
            stand.doors().keeping().open(stand.doors().keeping().choose(asked), by);
            return true;
        });
    }
}
