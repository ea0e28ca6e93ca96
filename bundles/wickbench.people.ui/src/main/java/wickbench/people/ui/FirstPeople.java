package wickbench.people.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.api.person.People;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;

/** A desk is named by its first administrator, who then enrols the others. */
@Component
public final class FirstPeople implements FirstSteps {
    private final People people;

    @Activate
    public FirstPeople(@Reference People people) {
        this.people = people;
    }

    @Override
    public List<FirstStep> steps() {
        int enrolled = people.all().size();
        return List.of(step(10, "begin", enrolled > 0), step(20, "enrol", enrolled > 1));
    }

    private static FirstStep step(int order, String what, boolean done) {
        return new FirstStep(
                order,
                PeopleUiWords.get("step." + what),
                PeopleUiWords.get("step." + what + ".text"),
                done,
                "people",
                "");
    }
}
