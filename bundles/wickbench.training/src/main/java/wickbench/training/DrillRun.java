package wickbench.training;

import java.util.List;
import wickbench.drill.Drill;
import wickbench.drill.DrillPlan;

/**
 * A drill from which its result can be reckoned again.
 *
 * @param seed everything that was left to chance follows from it
 * @param line thickness of a drawn line, in points of the screen
 * @param answers whether a line was seen, strip by strip
 */
public record DrillRun(DrillPlan plan, long seed, int line, List<Boolean> answers) {
    public DrillRun {
        answers = List.copyOf(answers);
    }

    public Drill drill() {
        return Drill.after(plan, seed, answers);
    }
}
