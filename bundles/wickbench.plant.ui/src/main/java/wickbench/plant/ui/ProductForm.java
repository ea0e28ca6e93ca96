package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import wickbench.plant.Stated;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Product;
import wickbench.plant.product.Soil;
import wickbench.plant.site.Line;
import wickbench.shell.ActForm;
import wickbench.widgets.Field;
import wickbench.widgets.Typed;
import wickbench.widgets.Work;

/** States a product, new or anew; that it holds none, and that nobody has said, are two answers. */
final class ProductForm {
    private final Stand stand;
    private final ActForm form;
    private final Field<Text> id;
    private final Field<Text> name;
    private final Field<Combo> answer;
    private final Field<Combo> soil;
    private Ticks<String> lines;
    private HeldField held;

    /** What is said of the allergens; the order is that of the choice. */
    private enum Answer {
        HOLDS,
        NONE,
        NOT_STATED
    }

    private ProductForm(Stand stand, ActForm form, Optional<Product> before) {
        this.stand = stand;
        this.form = form;
        id = form.text("product.id", before.map(Product::id).orElse(""));
        id.control().setEnabled(before.isEmpty());
        name = form.text("product.name", before.map(Product::name).orElse(""));
        form.field("product.lines", parent -> {
            lines = new Ticks<>(
                    parent,
                    stand.context().theme(),
                    stand.plant().lines().stream().map(Line::id).toList(),
                    line -> line,
                    before.map(Product::lines).orElse(Set.of()));
            return lines.control();
        });
        soil = form.choice(
                "product.soil",
                List.of(Soil.values()).stream()
                        .map(each -> PlantUiWords.get("soil." + each.code()))
                        .toList());
        soil.control().select(before.map(Product::soil).orElse(Soil.LIGHT).ordinal());
        answer = form.choice(
                "product.answer",
                List.of(
                        PlantUiWords.get("answer.holds"),
                        PlantUiWords.get("answer.none"),
                        PlantUiWords.get("answer.not-stated")));
        before.ifPresent(product -> answer.control().select(said(product).ordinal()));
        form.field("product.held", parent -> {
            held = new HeldField(
                    parent,
                    stand.context().theme(),
                    before.flatMap(Product::holds).orElse(List.of()),
                    () -> {
                        answer.clear();
                        stand.side().measure();
                    });
            return held.control();
        });
        form.act(
                "product.act",
                stand.may().permission(),
                this::collect,
                news -> stand.said("product.done", id.control().getText().strip())
                        .accept(news));
    }

    static void open(Stand stand, Optional<Product> before) {
        stand.open(
                before.isPresent() ? "product.change" : "product.new",
                form -> new ProductForm(stand, form, before),
                before.map(Product::name).orElse(""));
    }

    private static Answer said(Product product) {
        if (!product.stated()) {
            return Answer.NOT_STATED;
        }
        return product.allergens().isEmpty() ? Answer.NONE : Answer.HOLDS;
    }

    private Optional<Work<Integer>> collect() {
        Optional<String> code = Typed.words(id);
        Optional<String> called = Typed.words(name);
        Optional<Optional<List<Contained>>> holds = holds();
        if (code.isEmpty() || called.isEmpty() || holds.isEmpty()) {
            return Optional.empty();
        }
        if (lines.chosen().isEmpty()) {
            form.refuse(PlantUiWords.get("product.no-line"));
            return Optional.empty();
        }
        Soil sticks = Soil.values()[soil.control().getSelectionIndex()];
        return stand.state(
                Stated.of(new Product(code.get(), called.get(), Set.copyOf(lines.chosen()), holds.get(), sticks)));
    }

    /** Empty where the answer and what is listed do not fit, which is said then. */
    private Optional<Optional<List<Contained>>> holds() {
        int chosen = answer.control().getSelectionIndex();
        if (chosen < 0) {
            answer.complain(PlantUiWords.get("answer.missing"));
            return Optional.empty();
        }
        Answer said = Answer.values()[chosen];
        if ((said == Answer.HOLDS) == held.held().isEmpty()) {
            answer.complain(PlantUiWords.get(said == Answer.HOLDS ? "answer.empty" : "answer.listed"));
            return Optional.empty();
        }
        return Optional.of(said == Answer.NOT_STATED ? Optional.empty() : Optional.of(held.held()));
    }
}
