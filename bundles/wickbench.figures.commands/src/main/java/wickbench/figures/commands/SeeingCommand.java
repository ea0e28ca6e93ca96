package wickbench.figures.commands;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.seeing.Sensitivity;

/** {@code figures seeing}: how well a reader tells a line from none. */
@Command(name = "seeing")
final class SeeingCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "HITS")
    private long hits;

    @Parameters(index = "1", paramLabel = "SIGNALS")
    private long signals;

    @Parameters(index = "2", paramLabel = "ALARMS")
    private long alarms;

    @Parameters(index = "3", paramLabel = "NOISE")
    private long noise;

    @Override
    public Integer call() {
        return figures.answer(() -> Answer.of()
                .with(
                        "plain",
                        Sensitivity.of(hits, signals, alarms, noise)
                                .<Json>map(SeeingCommand::members)
                                .orElse(Json.Null.NULL))
                .with("corrected", members(Sensitivity.corrected(hits, signals, alarms, noise)))
                .saying("seeing.formula")
                .saying("seeing.corrected"));
    }

    private static Json.Obj members(Sensitivity of) {
        return Json.object()
                .with("dPrime", Answer.number(of.dPrime()))
                .with("criterion", Answer.number(of.criterion()))
                .with("beta", Answer.number(of.beta()))
                .with("area", Answer.number(of.area()));
    }
}
