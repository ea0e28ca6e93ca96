package wickbench.plant.ui;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantState;
import wickbench.shell.FirstStep;
import wickbench.shell.FirstSteps;

/** Changeovers and the programme need the plant to be stated first. */
@Component
public final class FirstPlant implements FirstSteps {
    private final PlantBook book;

    @Activate
    public FirstPlant(@Reference PlantBook book) {
        this.book = book;
    }

    @Override
    public List<FirstStep> steps() {
        PlantState now = book.at(book.now());
        return List.of(new FirstStep(
                30,
                PlantUiWords.get("step.plant"),
                PlantUiWords.get("step.plant.text"),
                !now.lines().isEmpty() && !now.points().isEmpty(),
                "plant",
                ""));
    }
}
