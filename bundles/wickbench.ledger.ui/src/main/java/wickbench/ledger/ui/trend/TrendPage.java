package wickbench.ledger.ui.trend;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.chart.ChartPainter;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.trend.Trending;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where quality assurance sees whether something has changed. */
@Component(property = {Page.ID + "=trend", Page.RANK + ":Integer=42"})
public final class TrendPage implements Page {
    private final TrendDoors doors;

    @Activate
    public TrendPage(
            @Reference Trending trending,
            @Reference SiteFacts site,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ChartPainter> painters) {
        Optional<ChartPainter> painter = painters.stream().findFirst();
        doors = new TrendDoors(trending, site, people, permissions, signIn, painter);
    }

    @Override
    public String title() {
        return TrendWords.get("title");
    }

    /** A series between its limits. */
    @Override
    public String guide() {
        return "ledger.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.line(3, 6, 21, 6).line(3, 19, 21, 19).line(3, 14, 8, 11, 13, 15, 17, 9, 21, 3);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new TrendPart(parent, context, doors);
    }
}
