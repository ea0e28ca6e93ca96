package wickbench.plant.face;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wickbench.api.check.Refusal;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.order.DayOrder;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.order.DayPlanner;

/** {@code plant}: which products to make in which order. */
@Component(property = CommandSet.NAME + "=plant")
public final class PlantCommand implements CommandSet {

    @Override
    public Object commands(Terminal terminal) {
        return new Plant(terminal);
    }

    @Command(name = "plant")
    private static final class Plant {
        private final Terminal terminal;

        Plant(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "order")
        int order(
                @Option(names = "--matrix", required = true, paramLabel = "FILE.csv", descriptionKey = "matrix")
                        Path matrix,
                @Option(names = "--closed", descriptionKey = "closed") boolean closed,
                @Option(names = "--at", paramLabel = "PRODUCT=PLACE", descriptionKey = "at") List<String> places,
                @Option(names = "--before", paramLabel = "FIRST=THEN", descriptionKey = "before") List<String> before,
                @Option(names = "--runs", paramLabel = "PRODUCT=MINUTES", descriptionKey = "runs") List<String> runs,
                @Option(names = "--due", paramLabel = "PRODUCT=MINUTES", descriptionKey = "due") List<String> due) {
            ChangeTable table = MatrixFile.read(matrix);
            Asked.Typed typed = new Asked.Typed(some(places), some(runs), some(due), some(before));
            DayOrder answer = DayPlanner.plan(new Asked(table, closed).of(typed));
            if (answer instanceof Found found) {
                new OrderPrint(table, closed, terminal).print(found);
                return 0;
            }
            boolean proven = answer instanceof DayOrder.Impossible;
            throw new Refusal(
                    "plant.order", PlantWords.get(proven ? "order.impossible" : "order.none-found", DayPlanner.PROVEN));
        }

        private static List<String> some(List<String> typed) {
            return typed == null ? List.of() : new ArrayList<>(typed);
        }
    }
}
