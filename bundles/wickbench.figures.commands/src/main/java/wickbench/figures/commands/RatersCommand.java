package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.agreement.ManyReaders;

/** {@code figures raters}: many readers on the same items. */
@Command(name = "raters")
final class RatersCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Override
    public Integer call() {
        Table table = TableFile.read(file);
        return figures.answer(table, () -> answer(ManyReaders.of(table.counts("count"))));
    }

    private static Answer answer(ManyReaders readers) {
        return Answer.of()
                .with("po", readers.observed())
                .with("pe", readers.expected())
                .with("kappa", readers.kappa())
                .with("se0", readers.se0())
                .with("z", readers.z())
                .with("p", readers.p())
                .with("freeMarginal", readers.freeMarginal())
                .with("ac1", readers.ac1())
                .with(
                        "categories",
                        Json.array(readers.categories().stream()
                                .map(each -> Json.object()
                                        .with("share", Answer.number(each.share()))
                                        .with("kappa", Answer.number(each.kappa())))
                                .toList()))
                .saying("raters.fleiss")
                .saying("raters.others");
    }
}
