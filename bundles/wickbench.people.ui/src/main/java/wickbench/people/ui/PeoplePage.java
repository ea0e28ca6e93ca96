package wickbench.people.ui;

import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Credentials;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.Recovery;
import wickbench.api.authority.SignIn;
import wickbench.api.journal.Journal;
import wickbench.api.person.People;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where people are enrolled, given roles, and known again. */
@Component(property = {Page.ID + "=people", Page.RANK + ":Integer=80"})
public final class PeoplePage implements Page {
    private final PeopleDoors doors;

    @Activate
    public PeoplePage(
            @Reference People people,
            @Reference SignIn signIn,
            @Reference Credentials credentials,
            @Reference Recovery recovery,
            @Reference Permissions permissions,
            @Reference Journal journal) {
        doors = new PeopleDoors(people, signIn, credentials, recovery, permissions, journal);
    }

    @Override
    public String title() {
        return PeopleUiWords.get("page.title");
    }

    /** Two heads, one before the other. */
    @Override
    public String guide() {
        return "people.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.circle(9, 8, 4)
                .line(2, 21, 3, 16, 9, 14, 15, 16, 16, 21)
                .circle(17, 7, 3)
                .line(18, 13, 21, 15, 22, 20);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new PeoplePart(parent, context, doors);
    }
}
