package wickbench.training.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import wickbench.api.attachment.Attachments;
import wickbench.api.authority.Permissions;
import wickbench.api.authority.SignIn;
import wickbench.api.chart.ChartPainter;
import wickbench.api.home.Home;
import wickbench.api.method.Methods;
import wickbench.api.person.People;
import wickbench.shell.Page;
import wickbench.shell.PageContext;
import wickbench.shell.PagePart;
import wickbench.training.Competences;
import wickbench.training.Drills;
import wickbench.training.RoundSheets;
import wickbench.training.Rounds;
import wickbench.training.Training;
import wickbench.training.TrainingPapers;
import wickbench.widgets.Glyph;

/** The page that shows who reads strips right, and lets people practise. */
@Component(property = {Page.ID + "=training", Page.RANK + ":Integer=30"})
public final class TrainingPage implements Page {
    private final TrainingDoors doors;

    @Activate
    public TrainingPage(
            @Reference Home home,
            @Reference Competences competences,
            @Reference Training training,
            @Reference Rounds rounds,
            @Reference RoundSheets sheets,
            @Reference TrainingPapers papers,
            @Reference Attachments attachments,
            @Reference Drills drills,
            @Reference People people,
            @Reference Permissions permissions,
            @Reference SignIn signIn,
            @Reference(cardinality = ReferenceCardinality.OPTIONAL, policyOption = ReferencePolicyOption.GREEDY)
                    Optional<Methods> methods,
            @Reference(cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY)
                    List<ChartPainter> painters) {
        doors = new TrainingDoors(
                home,
                competences,
                training,
                new BlindDoors(rounds, sheets, methods, attachments, new StripStarts()),
                papers,
                drills,
                people,
                permissions,
                signIn,
                painters.stream().findFirst());
    }

    @Override
    public String title() {
        return TrainingUiWords.get("page.title");
    }

    /** A strip below an eye. */
    @Override
    public String guide() {
        return "training.html";
    }

    @Override
    public Glyph glyph() {
        return pen -> pen.line(2, 8, 6, 4, 12, 3, 18, 4, 22, 8, 18, 12, 12, 13, 6, 12, 2, 8)
                .disc(12, 8, 2.5)
                .box(4, 17, 16, 5, 1)
                .line(9, 17, 9, 22)
                .line(13, 17, 13, 22);
    }

    @Override
    public PagePart open(Composite parent, PageContext context) {
        return new TrainingPart(parent, context, doors);
    }
}
