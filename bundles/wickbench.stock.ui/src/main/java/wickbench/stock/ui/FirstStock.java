package wickbench.stock.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;
import wickbench.stock.Fridges;
import wickbench.stock.Stockroom;

/** A lot can be received when its kit and the fridge that it goes into are known. */
@Component
public final class FirstStock implements FirstSteps {
    private final Home home;
    private final Stockroom room;
    private final Fridges fridges;

    @Activate
    public FirstStock(@Reference Home home, @Reference Stockroom room, @Reference Fridges fridges) {
        this.home = home;
        this.room = room;
        this.fridges = fridges;
    }

    @Override
    public List<FirstStep> steps() {
        boolean begun = home.isBegun();
        return List.of(
                step(50, "kit", begun && !room.kits().isEmpty(), Tab.LOTS),
                step(52, "fridge", begun && !fridges.all().isEmpty(), Tab.FRIDGES),
                step(54, "lot", begun && !room.lots(home.clock().instant()).isEmpty(), Tab.LOTS));
    }

    private static FirstStep step(int order, String what, boolean done, Tab tab) {
        return new FirstStep(
                order,
                StockUiWords.get("step." + what),
                StockUiWords.get("step." + what + ".text"),
                done,
                "stock",
                tab.code());
    }
}
