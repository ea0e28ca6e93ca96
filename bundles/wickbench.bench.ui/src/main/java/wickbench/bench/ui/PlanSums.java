package wickbench.bench.ui;

import wickbench.bench.run.RunPlanning.Planned;
import wickbench.reading.plan.WindowRule;
import wickbench.widgets.MinSec;

/** A plan in one line: how long, how near to the shortest, and what it could not do. */
final class PlanSums {
    private PlanSums() {}

    static String text(Planned planned) {
        String total = MinSec.of(planned.plan().total());
        String rule = planned.rule() == WindowRule.END ? "" : " " + FlowWords.get("plan.window-short");
        String best = planned.plan().optimal()
                ? FlowWords.get("plan.shortest", planned.plan().strips().size(), total)
                : FlowWords.get(
                        "plan.near",
                        planned.plan().strips().size(),
                        total,
                        MinSec.of(planned.plan().bound()));
        String lost = planned.plan().lost().isEmpty()
                ? ""
                : " " + FlowWords.get("plan.lost", planned.plan().lost().size());
        String later = planned.later() == 0 ? "" : " " + FlowWords.get("plan.later", planned.later());
        return best + later + rule + lost;
    }
}
