package wickbench.training.face;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.words.Coded;
import wickbench.figures.sums.TableText;
import wickbench.training.Observation;

/** The checklist of an observed test, filled in: a row a critical step. */
final class StepSheet {
    private StepSheet() {}

    static List<Observation.Step> read(Path file) {
        Sheet sheet = Sheet.read(file, List.of("step", "mark"), List.of());
        List<Observation.Step> steps = new ArrayList<>();
        for (TableText.Line line : sheet.lines()) {
            Optional<String> step = sheet.asked(line, "step", text -> text);
            Optional<Observation.Mark> mark =
                    sheet.asked(line, "mark", text -> Coded.of(Observation.Mark.class, text.toLowerCase(Locale.ROOT)));
            if (step.isPresent() && mark.isPresent()) {
                steps.add(new Observation.Step(step.get(), mark.get()));
            }
        }
        sheet.finish();
        return steps;
    }
}
