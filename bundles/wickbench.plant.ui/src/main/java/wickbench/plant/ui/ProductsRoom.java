package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.authority.Act;
import wickbench.api.person.PersonId;
import wickbench.plant.PlantState;
import wickbench.plant.product.Product;
import wickbench.plant.terms.ProductWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Column;
import wickbench.widgets.Controls;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Note;
import wickbench.widgets.Shape;
import wickbench.widgets.Side;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;
import wickbench.widgets.Type;

/** Products with what they hold; one of which nothing is stated stands out. */
final class ProductsRoom extends PlantRoom<ProductsRoom.Now> {
    private volatile List<Product> products = List.of();
    private Optional<Open> open = Optional.empty();
    private Optional<String> chosen = Optional.empty();

    private record Open(TableKit<Product> table, Side side) {}

    record Now(PlantState plant, PlantDoors.May may) implements Known {}

    ProductsRoom(Composite parent, PageContext context, PlantDoors doors) {
        super(parent, context, doors, "products.reading");
        reload();
    }

    @Override
    Now read(Optional<PersonId> actor) {
        return new Now(doors.book().at(doors.book().now()), doors.may(actor, Act.KEEP_PLANT));
    }

    @Override
    void fill(Now now) {
        products = now.plant().products();
        SashForm sash = halves();
        TableKit<Product> table = new TableKit<>(sash, context, spec());
        Side side = new Side(sash, context.theme());
        sash.setWeights(60, 40);
        Composite bar = context.theme().controls().row(room);
        context.theme().controls().mainButton(bar, PlantUiWords.get("product.new.open"), () -> form(Optional.empty()));
        context.theme().controls().button(bar, PlantUiWords.get("product.change.open"), () -> form(selected()));
        open = Optional.of(new Open(table, side));
        table.onSelect(rows -> rows.stream().findFirst().ifPresent(this::choose));
        table.onOpen(product -> form(Optional.of(product)));
        table.onLoaded(this::loaded);
    }

    @Override
    void take(Now now) {
        products = now.plant().products();
        open.orElseThrow().table().reload();
    }

    private Optional<Product> selected() {
        return products.stream()
                .filter(product -> chosen.filter(product.id()::equals).isPresent())
                .findFirst();
    }

    private void loaded() {
        if (!asking()) {
            selected().or(() -> products.stream().findFirst()).ifPresent(product -> {
                open.orElseThrow().table().select(product);
                choose(product);
            });
        }
        context.ready();
    }

    private void choose(Product product) {
        shown();
        chosen = Optional.of(product.id());
        open.orElseThrow().side().fill(content -> card(content, product));
    }

    private void card(Composite content, Product product) {
        Controls controls = context.theme().controls();
        Composite card = Fit.wide(controls.card(content, 1));
        controls.text(card, Type.STRONG, product.name());
        Mark mark = holds(product);
        Fit.wide(new MarkedLine(card, context.theme(), new Mark("", mark.shape(), mark.meaning()), mark.word()));
        new Facts(card, context.theme())
                .add(PlantUiWords.get("column.product"), product.id())
                .add(PlantUiWords.get("column.lines"), String.join(", ", new TreeSet<>(product.lines())))
                .add(
                        PlantUiWords.get("column.soil"),
                        PlantUiWords.get("soil." + product.soil().code()));
        if (!product.stated()) {
            Fit.wide(new Note(card, context.theme(), Meaning.ALARM, PlantUiWords.get("product.not-stated")));
        }
    }

    private void form(Optional<Product> before) {
        Side side = open.orElseThrow().side();
        ask(side, stand -> ProductForm.open(stand, before), this::loaded);
    }

    private TableSpec<Product> spec() {
        List<Column<Product>> columns = List.of(
                text("product", 150, Product::id),
                text("name", 190, Product::name),
                text("lines", 70, product -> String.join(", ", new TreeSet<>(product.lines()))),
                Column.<Product>marked("holds", title("holds"), 330, ProductsRoom::holds),
                text(
                        "soil",
                        100,
                        product -> PlantUiWords.get("soil." + product.soil().code())));
        return new TableSpec<>(
                "plant.products",
                PlantUiWords.get("products.name"),
                columns,
                new FreshRows<>(() -> products, columns),
                Optional.empty(),
                PlantUiWords.get("products.none"));
    }

    static Mark holds(Product product) {
        String words = ProductWords.holds(product);
        if (!product.stated()) {
            return new Mark(words, Shape.CROSS, Meaning.ALARM);
        }
        return product.allergens().isEmpty()
                ? new Mark(words, Shape.RING, Meaning.CALM)
                : new Mark(words, Shape.SQUARE, Meaning.NOTICE);
    }

    private static Column<Product> text(String id, int width, Function<Product, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return PlantUiWords.get("column." + id);
    }

    @Override
    public void focus() {
        open.ifPresent(now -> now.table().focus());
    }
}
