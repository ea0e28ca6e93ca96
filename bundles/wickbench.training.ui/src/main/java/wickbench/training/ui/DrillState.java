package wickbench.training.ui;

import wickbench.drill.Drill;
import wickbench.drill.DrillPlan;
import wickbench.training.DrillRun;

/**
 * How far a drill is.
 *
 * @param line how thick lines are drawn, in points of the screen; stays as it was when text grows in between
 */
record DrillState(Stage stage, long seed, int line, Drill drill, boolean kept) {

    /** What is on the screen. */
    enum Stage {
        BEGIN,
        WEDGE,
        STRIPS,
        RESULT
    }

    static DrillState begin(long seed, int line) {
        return new DrillState(Stage.BEGIN, seed, line, Drill.start(DrillPlan.USUAL, seed), false);
    }

    DrillState at(Stage next) {
        return new DrillState(next, seed, line, drill, kept);
    }

    DrillState with(Drill then) {
        return new DrillState(then.over() ? Stage.RESULT : Stage.STRIPS, seed, line, then, kept);
    }

    DrillState done() {
        return new DrillState(stage, seed, line, drill, true);
    }

    DrillRun run() {
        return new DrillRun(
                drill.plan(),
                seed,
                line,
                drill.answers().stream().map(Drill.Answer::seen).toList());
    }
}
