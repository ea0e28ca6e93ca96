package wickbench.plant.ui;

import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.person.People;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantKeeping;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page that says which tests, where and when. */
@Component(property = {Page.ID + "=plant", Page.RANK + ":Integer=50"})
public final class PlantPage implements Page {
    private final PlantDoors doors;

    @Activate
    public PlantPage(
            @Reference PlantBook book,
            @Reference PlantKeeping keeping,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference Attachments attachments) {
        doors = new PlantDoors(book, keeping, people, permissions, signIn, attachments);
    }

    @Override
    public String title() {
        return PlantUiWords.get("page.title");
    }

    /** Three vessels of a line, joined by a pipe. */
    @Override
    public String guide() {
        return "plant.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.box(2, 6, 5, 9, 1)
                .box(10, 9, 5, 6, 1)
                .box(18, 6, 4, 9, 1)
                .line(7, 12, 10, 12)
                .line(15, 12, 18, 12)
                .line(2, 19, 22, 19);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new PlantPart(parent, context, doors);
    }
}
