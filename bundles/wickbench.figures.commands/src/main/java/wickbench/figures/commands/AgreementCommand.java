package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.agreement.Kappa;
import wickbench.figures.agreement.TwoReaders;
import wickbench.figures.agreement.Weights;

/** {@code figures agreement}: two readers on the same items. */
@Command(name = "agreement")
final class AgreementCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--weights", paramLabel = "none|linear|quadratic|FILE")
    private String weights = "none";

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        Table table = TableFile.read(file);
        return figures.answer(table, () -> answer(table));
    }

    private Answer answer(Table table) {
        TwoReaders readers = TwoReaders.of(table.counts("count"));
        Kappa kappa = readers.kappa(weights(table.rows().size()), level.value());
        return Answer.of()
                .with("po", kappa.observed())
                .with("pe", kappa.expected())
                .with("kappa", kappa.kappa().estimate())
                .with("lower", kappa.kappa().lower())
                .with("upper", kappa.kappa().upper())
                .with(
                        "cohen",
                        errors(kappa.cohenSe(), kappa.cohenSe0(), kappa.kappa().estimate()))
                .with(
                        "fleiss",
                        errors(
                                kappa.fleissSe(),
                                kappa.fleissSe0(),
                                kappa.kappa().estimate()))
                .with("z", kappa.z())
                .with("p", kappa.p())
                .with("scott", kappa.scott())
                .with("ac1", kappa.ac1())
                .saying("agreement.kappa")
                .saying("agreement.errors")
                .saying("agreement.others");
    }

    private static Json errors(double se, double se0, double kappa) {
        return Json.object()
                .with("se", Answer.number(se))
                .with("se0", Answer.number(se0))
                .with("z", Answer.number(kappa / se0));
    }

    private Weights weights(int categories) {
        return switch (weights) {
            case "none" -> Weights.none(categories);
            case "linear" -> Weights.linear(categories);
            case "quadratic" -> Weights.quadratic(categories);
            default ->
                Weights.of(TableFile.read(Path.of(weights)).rows().stream()
                        .map(Table.Row::cells)
                        .toArray(double[][]::new));
        };
    }
}
