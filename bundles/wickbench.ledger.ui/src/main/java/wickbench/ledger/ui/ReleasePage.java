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
import wickbench.api.home.Home;
import wickbench.api.person.People;
import wickbench.api.profile.SiteFacts;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.acts.Deciding;
import wickbench.ledger.acts.Releasing;
import wickbench.ledger.acts.Reviewing;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where people decide what becomes of what was tested. */
@Component(property = {Page.ID + "=release", Page.RANK + ":Integer=41"})
public final class ReleasePage implements Page {
    private final ActDoors doors;
    private final Home home;

    @Activate
    public ReleasePage(
            @Reference Home home,
            @Reference Reviewing reviewing,
            @Reference Correcting correcting,
            @Reference Deciding deciding,
            @Reference Releasing releasing,
            @Reference SiteFacts site,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<People> people) {
        this.home = home;
        doors = new ActDoors(reviewing, correcting, deciding, releasing, site, people, permissions, signIn);
    }

    @Override
    public String title() {
        return LedgerUiWords.get("release.page");
    }

    /** A gate with its bar up. */
    @Override
    public String guide() {
        return "ledger.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.box(4, 10, 5, 11, 1).line(6.5, 10, 20, 3).line(13, 21, 20, 21);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new ReleasePart(parent, context, doors, home.clock());
    }
}
