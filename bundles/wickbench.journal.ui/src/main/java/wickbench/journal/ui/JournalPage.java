package wickbench.journal.ui;

import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.backup.Backups;
import wickbench.api.clash.Settling;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.journal.Proofs;
import wickbench.api.journal.Stations;
import wickbench.api.person.People;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where the journal is verified, compared, backed up and restored. */
@Component(property = {Page.ID + "=journal", Page.RANK + ":Integer=90"})
public final class JournalPage implements Page {
    private final JournalDoors doors;

    @Activate
    public JournalPage(
            @Reference Journal journal,
            @Reference Proofs proofs,
            @Reference Backups backups,
            @Reference Index index,
            @Reference Stations stations,
            @Reference Settling settling,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn) {
        doors = new JournalDoors(
                journal, proofs, backups, index, stations, new ClashDoors(settling, people, permissions, signIn));
    }

    @Override
    public String title() {
        return JournalUiWords.get("page.title");
    }

    /** Three links of a chain. */
    @Override
    public String guide() {
        return "journal.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.box(2, 8, 9, 8, 4).box(8, 8, 9, 8, 4).box(14, 8, 8, 8, 4);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new JournalPart(parent, context, doors);
    }
}
