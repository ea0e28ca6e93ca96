package wickbench.parts.ui;

import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.part.Parts;
import wickbench.api.part.SelfCheck;
import wickbench.api.person.People;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where sets are added and removed while the program runs. */
@Component(property = {Page.ID + "=parts", Page.RANK + ":Integer=95"})
public final class PartsPage implements Page {
    private final PartsDoors doors;

    @Activate
    public PartsPage(
            @Reference Parts parts,
            @Reference SelfCheck check,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn) {
        doors = new PartsDoors(parts, check, people, permissions, signIn);
    }

    @Override
    public String title() {
        return PartsUiWords.get("page.title");
    }

    /** Three blocks that stand together, and room for a fourth. */
    @Override
    public Glyph glyph() {
        return pen -> pen.box(3, 3, 8, 8, 1)
                .box(3, 13, 8, 8, 1)
                .box(13, 13, 8, 8, 1)
                .line(17, 3, 17, 11)
                .line(13, 7, 21, 7);
    }

    @Override
    public String guide() {
        return "parts.html";
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new PartsPart(parent, context, doors);
    }
}
