package wickbench.bench.ui;

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
import wickbench.api.method.Methods;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.bench.evidence.MethodPapers;
import wickbench.bench.evidence.Verifications;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where the site's methods are looked up, written, issued, verified and withdrawn. */
@Component(property = {Page.ID + "=methods", Page.RANK + ":Integer=60"})
public final class MethodsPage implements Page {
    private final MethodDoors doors;

    @Activate
    public MethodsPage(
            @Reference Methods methods,
            @Reference SiteFacts site,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference Verifications verifications,
            @Reference MethodPapers papers,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<ChartPainter> painter) {
        doors = new MethodDoors(methods, site, people, permissions, signIn, verifications, papers, painter);
    }

    @Override
    public String title() {
        return BenchUiWords.get("methods.title");
    }

    /** A page with its steps. */
    @Override
    public Glyph glyph() {
        return pen -> pen.box(4, 3, 16, 18, 2)
                .disc(8, 8, 1)
                .line(11, 8, 16, 8)
                .disc(8, 12, 1)
                .line(11, 12, 16, 12)
                .disc(8, 16, 1)
                .line(11, 16, 14, 16);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new MethodsPart(parent, context, doors);
    }
}
