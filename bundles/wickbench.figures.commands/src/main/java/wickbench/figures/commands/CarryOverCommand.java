package wickbench.figures.commands;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.figures.level.ActionLevel;
import wickbench.figures.level.CarryOver;

/** {@code figures carry-over}: from a swab or a rinse to the next product, or back from its action level. */
@Command(name = "carry-over")
final class CarryOverCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Option(names = "--swab", paramLabel = "UG")
    private Optional<BigDecimal> swab = Optional.empty();

    @Option(names = "--area", paramLabel = "M2")
    private Optional<BigDecimal> area = Optional.empty();

    @Option(names = "--recovery", paramLabel = "R")
    private BigDecimal recovery = BigDecimal.ONE;

    @Option(names = "--transfer", paramLabel = "F")
    private BigDecimal transfer = BigDecimal.ONE;

    @Option(names = "--rinse", paramLabel = "MG_L")
    private Optional<BigDecimal> rinse = Optional.empty();

    @Option(names = "--hold-up", paramLabel = "L")
    private Optional<BigDecimal> holdUp = Optional.empty();

    @Option(names = "--batch", required = true, paramLabel = "KG")
    private BigDecimal batch;

    @Option(names = "--first-off", paramLabel = "KG")
    private Optional<BigDecimal> firstOff = Optional.empty();

    @Option(names = "--action-level", paramLabel = "MG_KG")
    private Optional<BigDecimal> level = Optional.empty();

    @Override
    public Integer call() {
        if (area.isPresent() == holdUp.isPresent()) {
            throw wrong("carry-over.area-or-hold-up");
        }
        if (swab.isPresent() && area.isEmpty() || rinse.isPresent() && holdUp.isEmpty()) {
            throw wrong("carry-over.other-sample");
        }
        if (swab.isEmpty() && rinse.isEmpty() && level.isEmpty()) {
            throw wrong("carry-over.nothing");
        }
        return figures.answer(this::answer);
    }

    private static BadInput wrong(String key) {
        return new BadInput(Complaint.of("carry-over", FiguresWords.get(key)));
    }

    private Answer answer() {
        CarryOver.Masses masses = new CarryOver.Masses(batch, firstOff.orElse(batch));
        Optional<CarryOver> found = area.isPresent()
                ? swab.map(result -> CarryOver.ofSwab(result, surface(), masses))
                : rinse.map(result -> CarryOver.ofRinse(result, holdUp.orElseThrow(), masses));
        Answer answer = Answer.of();
        if (found.isPresent()) {
            answer = answer.with("totalMg", found.get().totalMg());
            answer = masses(answer, "mgPerKg", found.get().batch(), found.get().firstOff());
        }
        if (level.isPresent()) {
            ActionLevel action = new ActionLevel(level.get());
            answer = masses(
                    answer,
                    area.isPresent() ? "swabLimit" : "rinseLimit",
                    limit(action, batch),
                    limit(action, masses.firstOffKg()));
        }
        return answer.saying(area.isPresent() ? "carry-over.swab" : "carry-over.rinse")
                .saying("carry-over.first-off-decides");
    }

    private CarryOver.Surface surface() {
        return new CarryOver.Surface(area.orElseThrow(), recovery, transfer);
    }

    private BigDecimal limit(ActionLevel action, BigDecimal mass) {
        return area.isPresent()
                ? CarryOver.swabLimit(action, surface(), mass)
                : CarryOver.rinseLimit(action, holdUp.orElseThrow(), mass);
    }

    private Answer masses(Answer answer, String name, BigDecimal ofBatch, BigDecimal ofFirst) {
        return answer.with(
                name,
                Json.object()
                        .with("batch", Json.Num.rounded(ofBatch))
                        .withOptional("firstOff", firstOff.map(some -> new Json.Num(Json.Num.rounded(ofFirst)))));
    }
}
