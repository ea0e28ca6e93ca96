package wickbench.bench.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.reading.plan.PlannedStrip;
import wickbench.reading.plan.RunPlan;

/** Prints a plan: a table and bars for people, one value for machines. */
final class PlanPrint {
    private static final int MILLI_DIGITS = 3;

    private PlanPrint() {}

    static void print(RunPlan plan, Terminal terminal) {
        if (terminal.json()) {
            terminal.json(json(plan));
            return;
        }
        terminal.table(header(), plan.strips().stream().map(PlanPrint::row).toList());
        terminal.line("");
        Bars.of(plan).forEach(terminal::line);
        terminal.line("");
        terminal.line(PlanWords.get("plan.bars"));
        terminal.line(summary(plan));
        terminal.line(PlanWords.get("plan.caution"));
    }

    private static String summary(RunPlan plan) {
        return plan.optimal()
                ? PlanWords.get("plan.optimal", text(plan.total()))
                : PlanWords.get("plan.within", text(plan.total()), text(plan.bound()), text(plan.gap()));
    }

    private static Json.Obj json(RunPlan plan) {
        return Json.object()
                .with("total_s", seconds(plan.total()))
                .with("optimal", plan.optimal())
                .with("bound_s", seconds(plan.bound()))
                .with("lateness_s", seconds(plan.lateness()))
                .with("least_slack_s", seconds(plan.leastSlack()))
                .with("refined", plan.refined())
                .with(
                        "strips",
                        Json.array(plan.strips().stream().map(PlanPrint::json).toList()));
    }

    private static Json.Obj json(PlannedStrip planned) {
        return Json.object()
                .with("strip", planned.strip().name())
                .with("develop_s", seconds(planned.strip().develop()))
                .with("dip_start_s", seconds(planned.dipStart()))
                .with("read_start_s", seconds(planned.readStart()));
    }

    private static List<String> header() {
        return List.of(
                PlanWords.get("plan.strip"),
                PlanWords.get("plan.begin"),
                PlanWords.get("plan.started"),
                PlanWords.get("plan.opens"),
                PlanWords.get("plan.read"),
                PlanWords.get("plan.closes"));
    }

    private static List<String> row(PlannedStrip planned) {
        return List.of(
                planned.strip().name(),
                text(planned.dipStart()),
                text(planned.started()),
                text(planned.opens()),
                text(planned.readStart()),
                text(planned.closes()));
    }

    /** Minutes and seconds, for example {@code 17:05}. */
    private static String text(Duration span) {
        String fraction = span.toMillisPart() == 0 ? "" : String.format(".%03d", span.toMillisPart());
        return String.format("%d:%02d", span.toMinutes(), span.toSecondsPart()) + fraction;
    }

    private static BigDecimal seconds(Duration span) {
        BigDecimal seconds = BigDecimal.valueOf(span.toMillis(), MILLI_DIGITS).stripTrailingZeros();
        return seconds.scale() < 0 ? seconds.setScale(0) : seconds;
    }
}
