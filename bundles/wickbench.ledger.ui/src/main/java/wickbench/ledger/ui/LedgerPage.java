package wickbench.ledger.ui;

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
import wickbench.api.journal.Journal;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;
import wickbench.ledger.papers.Packing;
import wickbench.ledger.papers.Papers;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where results are found and looked into. */
@Component(property = {Page.ID + "=ledger", Page.RANK + ":Integer=40"})
public final class LedgerPage implements Page {
    private final Ledger ledger;
    private final ActDoors doors;

    @Activate
    public LedgerPage(
            @Reference Results results,
            @Reference Journal journal,
            @Reference SiteFacts site,
            @Reference Reviewing reviewing,
            @Reference Correcting correcting,
            @Reference Deciding deciding,
            @Reference Releasing releasing,
            @Reference Papers papers,
            @Reference Packing packing,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ChartPainter> painters) {
        ledger = new Ledger(results, journal, site, people, painters, papers, packing);
        doors = new ActDoors(reviewing, correcting, deciding, releasing, site, people, permissions, signIn);
    }

    @Override
    public String title() {
        return LedgerUiWords.get("ledger.title");
    }

    /** A book of lines, sealed. */
    @Override
    public String guide() {
        return "ledger.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.box(4, 3, 16, 18, 2)
                .line(8, 3, 8, 21)
                .line(11, 8, 17, 8)
                .line(11, 12, 17, 12)
                .circle(16, 17, 1.5);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new LedgerPart(parent, context, ledger, doors);
    }
}
