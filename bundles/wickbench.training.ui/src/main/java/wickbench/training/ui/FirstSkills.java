package wickbench.training.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.home.Home;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;
import wickbench.training.CompetenceState;
import wickbench.training.Competences;

/** Who is not authorised is stopped or minded at the bench. */
@Component
public final class FirstSkills implements FirstSteps {
    private final Home home;
    private final Competences competences;

    @Activate
    public FirstSkills(@Reference Home home, @Reference Competences competences) {
        this.home = home;
        this.competences = competences;
    }

    @Override
    public List<FirstStep> steps() {
        return List.of(new FirstStep(
                60,
                TrainingUiWords.get("step.authorise"),
                TrainingUiWords.get("step.authorise.text"),
                home.isBegun() && somebodyWasAuthorised(),
                "training",
                Tab.SKILLS.code()));
    }

    private boolean somebodyWasAuthorised() {
        return competences.matrix(home.clock().instant()).cells().stream()
                .anyMatch(cell -> cell.state() != CompetenceState.NEVER);
    }
}
