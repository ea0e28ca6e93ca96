package wickbench.stock.ui;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.chart.ChartPainter;
import wickbench.api.clash.Settling;
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.stock.Fridges;
import wickbench.stock.Papers;
import wickbench.stock.Stockkeeping;
import wickbench.stock.Stockroom;
import wickbench.widgets.Glyph;

/** The page where kits are kept: lots, fridges, outlook, trace and equipment. */
@Component(property = {Page.ID + "=stock", Page.RANK + ":Integer=30"})
public final class StockPage implements Page {
    private final StockDoors doors;

    @Activate
    public StockPage(
            @Reference Stockroom room,
            @Reference Stockkeeping keeping,
            @Reference Fridges fridges,
            @Reference Papers papers,
            @Reference Home home,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference Settling settling,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ChartPainter> painters) {
        doors = new StockDoors(
                room,
                keeping,
                fridges,
                papers,
                home.clock(),
                people,
                permissions,
                signIn,
                settling,
                List.copyOf(painters));
    }

    @Override
    public String title() {
        return StockUiWords.get("page.title");
    }

    /** A shelf with boxes. */
    @Override
    public String guide() {
        return "stock.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.line(3, 3, 3, 21)
                .line(21, 3, 21, 21)
                .line(3, 11, 21, 11)
                .line(3, 20, 21, 20)
                .box(6, 5, 5, 6, 1)
                .box(13, 7, 5, 4, 1)
                .box(7, 14, 8, 6, 1);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new StockPart(parent, context, doors);
    }
}
