package wickbench.figures.commands;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.NoAnswer;
import wickbench.figures.store.Reorder;

/** {@code figures reorder}: the stock at which to order again. */
@Command(name = "reorder")
final class ReorderCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--demand", required = true, paramLabel = "D")
    private double demand;

    @Option(names = "--demand-sd", paramLabel = "S")
    private double demandDeviation;

    @Option(names = "--lead", required = true, paramLabel = "L")
    private double lead;

    @Option(names = "--lead-sd", paramLabel = "S")
    private double leadDeviation;

    @Option(names = "--service", paramLabel = "P")
    private double service = 0.95;

    @Option(names = "--poisson")
    private boolean poisson;

    @Option(names = "--order-cost", paramLabel = "MONEY")
    private Optional<Double> order = Optional.empty();

    @Option(names = "--holding-cost", paramLabel = "MONEY")
    private Optional<Double> holding = Optional.empty();

    @Override
    public Integer call() {
        return figures.answer(this::answer);
    }

    private Answer answer() {
        Reorder.Supply supply = new Reorder.Supply(demand, demandDeviation, lead, leadDeviation);
        if (poisson && (demandDeviation > 0 || leadDeviation > 0)) {
            throw NoAnswer.of("--poisson", "reorder.poisson-has-no-deviation");
        }
        Reorder reorder = poisson ? Reorder.poisson(demand * lead, service) : Reorder.normal(supply, service);
        Answer answer = Answer.of()
                .with("reorderPoint", reorder.point())
                .with("safetyStock", reorder.safety())
                .with("leadDemand", reorder.leadDemand());
        return quantity(answer).saying(poisson ? "reorder.poisson" : "reorder.normal");
    }

    private Answer quantity(Answer answer) {
        if (order.isEmpty() != holding.isEmpty()) {
            throw NoAnswer.of(order.isEmpty() ? "--order-cost" : "--holding-cost", "reorder.both-costs");
        }
        return order.map(cost -> answer.with(
                                "orderQuantity", Reorder.economicQuantity(demand, cost, holding.orElseThrow()))
                        .saying("reorder.quantity"))
                .orElse(answer);
    }
}
