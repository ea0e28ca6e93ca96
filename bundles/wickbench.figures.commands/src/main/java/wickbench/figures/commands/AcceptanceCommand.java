package wickbench.figures.commands;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.sampling.OutgoingLimit;
import wickbench.figures.sampling.Plan;
import wickbench.figures.sampling.ReaderRound;

/** {@code figures acceptance}: what a sampling plan, or a reader's round, lets pass. */
@Command(name = "acceptance")
final class AcceptanceCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--n", required = true, paramLabel = "N")
    private int n;

    @Option(names = "--accept", required = true, paramLabel = "C")
    private int accept;

    @Option(names = "--lot", paramLabel = "N")
    private Optional<Integer> lot = Optional.empty();

    @Option(names = "--at", split = ",", paramLabel = "P")
    private List<Double> shares = List.of(0.01, 0.02, 0.05, 0.1);

    @Option(names = "--skill", split = ",", paramLabel = "S")
    private List<Double> skills = List.of();

    @Override
    public Integer call() {
        return figures.answer(this::answer);
    }

    private Answer answer() {
        Plan plan = new Plan(n, accept);
        OutgoingLimit limit = lot.map(plan::outgoingLimit).orElseGet(plan::outgoingLimit);
        Answer answer = Answer.of()
                .with("p95", plan.shareAccepted(0.95))
                .with("p50", plan.shareAccepted(0.5))
                .with("p10", plan.shareAccepted(0.1))
                .with("aoql", limit.share())
                .with("aoqlAt", limit.at())
                .with("acceptance", curve(plan));
        return (skills.isEmpty() ? answer : answer.with("readers", readers()))
                .saying("acceptance.formula")
                .saying(lot.isPresent() ? "acceptance.lot" : "acceptance.large")
                .saying("samples.random");
    }

    private Json curve(Plan plan) {
        List<Json> points = new ArrayList<>();
        for (double p : shares) {
            Json.Obj point =
                    Json.object().with("p", Answer.number(p)).with("chance", Answer.number(plan.acceptance(p)));
            points.add(lot.map(items -> ofLot(point, plan, p, items))
                    .orElseGet(() -> point.with("outgoing", Answer.number(plan.outgoing(p)))));
        }
        return Json.array(points);
    }

    private static Json.Obj ofLot(Json.Obj point, Plan plan, double p, int items) {
        return point.with("chanceOfLot", Answer.number(plan.acceptanceOfLot(items, faulty(p, items))))
                .with("outgoing", Answer.number(plan.outgoing(p, items)))
                .with("inspected", Answer.number(plan.inspected(p, items)));
    }

    /** Half an item is none; the nearest whole number of faulty items stands for the share. */
    private static int faulty(double p, int items) {
        return BigDecimal.valueOf(p)
                .multiply(BigDecimal.valueOf(items))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    private Json readers() {
        ReaderRound round = new ReaderRound(n, accept);
        return Json.array(skills.stream()
                .map(skill -> Json.object()
                        .with("skill", Answer.number(skill))
                        .with("passes", Answer.number(round.passes(skill))))
                .toList());
    }
}
