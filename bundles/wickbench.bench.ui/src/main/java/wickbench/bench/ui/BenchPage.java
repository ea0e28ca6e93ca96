package wickbench.bench.ui;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.SignIn;
import wickbench.api.home.Home;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.api.lot.Lots;
import wickbench.api.method.Methods;
import wickbench.api.owed.OwedWork;
import wickbench.api.person.People;
import wickbench.api.planned.PlannedTests;
import wickbench.api.profile.SiteFacts;
import wickbench.api.profile.SiteProfile;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.RunSheets;
import wickbench.bench.run.Runs;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.widgets.Glyph;

/** The page where strips are read and recorded. */
@Component(property = {Page.ID + "=bench", Page.RANK + ":Integer=10"})
public final class BenchPage implements Page {
    private final BenchDoors doors;

    @Activate
    public BenchPage(
            @Reference Home home,
            @Reference Journal journal,
            @Reference Index index,
            @Reference Methods methods,
            @Reference ReadingDoor door,
            @Reference RunSheets sheets,
            @Reference Runs runs,
            @Reference OwedWork owed,
            @Reference RunAdvice advice,
            @Reference People people,
            @Reference SignIn signIn,
            @Reference SiteProfile profile,
            @Reference SiteFacts site,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<Lots> lots,
            @Reference Attachments attachments,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<PlannedTests> planned) {
        doors = new BenchDoors(
                home,
                journal,
                index,
                methods,
                door,
                sheets,
                runs,
                owed,
                advice,
                new BenchDoors.Persons(people, signIn, profile, site),
                lots,
                attachments,
                planned,
                new PhotoTray());
    }

    @Override
    public String title() {
        return BenchUiWords.get("bench.title");
    }

    /** A strip with its two lines and its port. */
    @Override
    public String guide() {
        return "bench.html";
    }

    @Override
    public Glyph glyph() {
        return pen ->
                pen.box(7, 2, 10, 20, 3).line(10, 7, 14, 7).line(10, 11, 14, 11).circle(12, 17, 2);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new BenchPart(parent, context, doors, new Tones());
    }
}
