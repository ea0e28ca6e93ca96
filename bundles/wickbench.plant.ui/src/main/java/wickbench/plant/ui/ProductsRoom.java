package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.plant.PlantState;
import wickbench.plant.product.Product;
import wickbench.plant.terms.ProductWords;
import wickbench.shell.PageContext;
import wickbench.widgets.Column;
import wickbench.widgets.Fit;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableKit;
import wickbench.widgets.TableSpec;

/** Products with what they hold; one of which nothing is stated stands out. */
final class ProductsRoom implements Room {
    private final PageContext context;
    private final PlantDoors doors;
    private final Composite room;
    private volatile List<Product> products = List.of();
    private Optional<TableKit<Product>> table = Optional.empty();

    ProductsRoom(Composite parent, PageContext context, PlantDoors doors) {
        this.context = context;
        this.doors = doors;
        room = context.theme().controls().box(parent, 1);
        reload();
    }

    @Override
    public Composite control() {
        return room;
    }

    @Override
    public void reload() {
        context.jobs()
                .run(
                        PlantUiWords.get("products.reading"),
                        progress -> doors.book().at(doors.book().now()),
                        this::take);
    }

    private void take(PlantState plant) {
        products = plant.products();
        if (table.isPresent()) {
            table.get().reload();
        } else {
            for (Control child : room.getChildren()) {
                child.dispose();
            }
            if (products.isEmpty()) {
                Nothing.yet(room, context, "empty");
                context.ready();
            } else {
                TableKit<Product> made = new TableKit<>(room, context, spec());
                Fit.grow(made.control());
                made.onLoaded(context::ready);
                table = Optional.of(made);
            }
        }
        room.layout(true, true);
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
        table.ifPresent(TableKit::focus);
    }
}
