package wickbench.plant.face;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.Refusal;
import wickbench.plant.PlantState;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.DayTable;
import wickbench.plant.day.DayProducts;
import wickbench.plant.day.Demands;
import wickbench.plant.day.Demands.Names;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.order.DayOrder;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.order.DayPlanner;
import wickbench.plant.product.Product;
import wickbench.plant.terms.PlantWords;

/** Commands that ask: what a change needs, in which order, what is due. */
abstract class OrderCommands {
    final Doors doors;

    OrderCommands(Doors doors) {
        this.doors = doors;
    }

    @Command(name = "order")
    int order(
            @Parameters(arity = "0..1", paramLabel = "P1,P2,…", descriptionKey = "products") String products,
            @Option(names = "--matrix", paramLabel = "FILE.csv", descriptionKey = "matrix") Path matrix,
            @Option(names = "--line", paramLabel = "LINE", descriptionKey = "line") String line,
            @Option(names = "--closed", descriptionKey = "closed") boolean closed,
            @Option(names = "--at", paramLabel = "PRODUCT=PLACE", descriptionKey = "at") List<String> places,
            @Option(names = "--before", paramLabel = "FIRST=THEN", descriptionKey = "before") List<String> before,
            @Option(names = "--runs", paramLabel = "PRODUCT=MINUTES", descriptionKey = "runs") List<String> runs,
            @Option(names = "--due", paramLabel = "PRODUCT=MINUTES", descriptionKey = "due") List<String> due) {
        if ((matrix == null) == (line == null) || (line == null) != (products == null)) {
            throw Typed.wrong("order", "order.either");
        }
        ChangeTable table = matrix == null ? table(line, products) : MatrixFile.read(matrix);
        Demands.Typed typed = new Demands.Typed(some(places), some(runs), some(due), some(before));
        DayOrder answer = DayPlanner.plan(new Demands(table, closed, Names.OPTIONS).of(typed));
        if (answer instanceof Found found) {
            new OrderPrint(table, closed, doors.terminal()).print(found);
            return 0;
        }
        boolean proven = answer instanceof DayOrder.Impossible;
        throw new Refusal(
                "plant.order", PlantWords.get(proven ? "order.impossible" : "order.none-found", DayPlanner.PROVEN));
    }

    private ChangeTable table(String line, String products) {
        Instant now = doors.book().now();
        PlantState state = doors.book().at(now);
        return DayTable.of(
                DayProducts.of("PRODUCT", state, line, products), doors.book().changing(line, now));
    }

    static Product product(PlantState state, String id, String line) {
        Product product = state.product(id).orElseThrow(() -> Typed.wrong("PRODUCT", "product.unknown", id));
        if (!product.lines().contains(line)) {
            throw Typed.wrong("PRODUCT", "product.not-on", id, line);
        }
        return product;
    }

    @Command(name = "changeover")
    int changeover(
            @Parameters(paramLabel = "FROM") String from,
            @Parameters(paramLabel = "TO") String to,
            @Option(names = "--line", required = true, paramLabel = "LINE") String line) {
        Instant now = doors.book().now();
        PlantState state = doors.book().at(now);
        Changeover change = doors.book().changing(line, now).of(product(state, from, line), product(state, to, line));
        new ChangePrint(doors.terminal()).print(change);
        return change.allowed() ? 0 : 1;
    }

    @Command(name = "matrix")
    int matrix(@Option(names = "--line", required = true, paramLabel = "LINE") String line) {
        Instant now = doors.book().now();
        List<Product> products = doors.book().at(now).productsOf(line);
        new ChangePrint(doors.terminal()).matrix(products, doors.book().changing(line, now));
        return 0;
    }

    @Command(name = "due")
    int due(@Option(names = "--at", paramLabel = "TIME") Optional<String> at, @Option(names = "--all") boolean all) {
        Instant when =
                at.map(text -> Typed.upTo("--at", text, doors.book().zone())).orElseGet(doors.book()::now);
        boolean open = new DuePrint(doors.terminal(), doors.book().zone())
                .print(doors.book().due(when), all);
        return open ? 1 : 0;
    }

    static List<String> some(List<String> typed) {
        return typed == null ? List.of() : new ArrayList<>(typed);
    }
}
