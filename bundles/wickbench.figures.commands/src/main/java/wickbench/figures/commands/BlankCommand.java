package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.detection.LimitOfBlank;
import wickbench.figures.detection.LimitOfBlank.Parametric;

/** {@code figures blank}: the limit of blank, and with low samples that of detection. */
@Command(name = "blank")
final class BlankCommand implements Callable<Integer> {
    /** From so many reagent lots on they are taken together. */
    private static final int POOLED = 4;

    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--rank")
    private boolean rank;

    @Option(names = "--low", paramLabel = "FILE")
    private Optional<Path> low = Optional.empty();

    @Override
    public Integer call() {
        List<BlankFile.Lot> lots = BlankFile.read(file);
        return figures.answer(() -> answer(lots.size() < POOLED ? lots : List.of(pooled(lots))));
    }

    private Answer answer(List<BlankFile.Lot> lots) {
        BlankFile.Lot worst =
                lots.stream().max(Comparator.comparingDouble(this::limit)).orElseThrow();
        Answer answer = Answer.of().with("lob", limit(worst)).with("results", worst.values().length);
        if (!rank) {
            Parametric blank = LimitOfBlank.parametric(worst.values(), worst.samples());
            answer = parts(answer, blank).with("uncorrected", blank.plain());
        }
        if (lots.size() > 1) {
            answer =
                    answer.with("lots", Json.array(lots.stream().map(this::line).toList()));
        }
        Answer blank = answer.saying(rank ? "blank.rank" : "blank.parametric");
        return low.map(results -> detected(blank, limit(worst), results)).orElse(blank);
    }

    private static Answer detected(Answer blank, double limit, Path results) {
        BlankFile.Lot low = pooled(BlankFile.read(results));
        Parametric detection = LimitOfBlank.detection(limit, low.values(), low.samples());
        return blank.with(
                        "lod",
                        Json.object()
                                .with("value", Answer.number(detection.limit()))
                                .with("sd", Answer.number(detection.sd()))
                                .with("factor", Answer.number(detection.factor()))
                                .with("uncorrected", Answer.number(detection.plain())))
                .saying("blank.lod");
    }

    private double limit(BlankFile.Lot lot) {
        return rank
                ? LimitOfBlank.byRank(lot.values())
                : LimitOfBlank.parametric(lot.values(), lot.samples()).limit();
    }

    private Json.Obj line(BlankFile.Lot lot) {
        return Json.object()
                .with("lot", lot.name())
                .with("results", lot.values().length)
                .with("lob", Answer.number(limit(lot)));
    }

    private static Answer parts(Answer answer, Parametric blank) {
        return answer.with("mean", blank.mean()).with("sd", blank.sd()).with("factor", blank.factor());
    }

    private static BlankFile.Lot pooled(List<BlankFile.Lot> lots) {
        double[] all = lots.stream()
                .flatMapToDouble(lot -> Arrays.stream(lot.values()))
                .toArray();
        return new BlankFile.Lot(
                "", all, lots.stream().mapToInt(BlankFile.Lot::samples).sum());
    }
}
