package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.json.Json;
import wickbench.figures.agreement.AttributeStudy;
import wickbench.figures.agreement.AttributeStudy.Judgement;

/** {@code figures attributes}: several readers, several trials, one reference. */
@Command(name = "attributes")
final class AttributesCommand implements Callable<Integer> {
    private static final List<String> COLUMNS = List.of("item", "reader", "reading", "reference");

    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        Table table = TableFile.read(file, COLUMNS.toArray(String[]::new));
        return figures.answer(table, () -> answer(AttributeStudy.of(judgements(table), level.value())));
    }

    private static List<Judgement> judgements(Table table) {
        double[] items = table.numbers(0);
        double[] readers = table.numbers(1);
        boolean[] said = answers(table, 2);
        boolean[] truth = answers(table, 3);
        return IntStream.range(0, items.length)
                .mapToObj(i -> new Judgement(TableText.plain(items[i]), TableText.plain(readers[i]), said[i], truth[i]))
                .toList();
    }

    private static boolean[] answers(Table table, int column) {
        double[] cells = table.numbers(column);
        boolean[] answers = new boolean[cells.length];
        for (int i = 0; i < cells.length; i++) {
            if (cells[i] != 0 && cells[i] != 1) {
                throw new BadInput(Complaint.at(
                        table.source(),
                        table.lineOf(i),
                        COLUMNS.get(column),
                        FiguresWords.get("attributes.zero-or-one", TableText.plain(cells[i]))));
            }
            answers[i] = cells[i] == 1;
        }
        return answers;
    }

    private static Answer answer(AttributeStudy study) {
        return Answer.of()
                .withLimits("system", study.system())
                .with(
                        "readers",
                        Json.array(study.readers().entrySet().stream()
                                .map(each -> row(each.getKey(), each.getValue()))
                                .toList()))
                .saying("attributes.formula");
    }

    private static Json.Obj row(String name, AttributeStudy.Reader reader) {
        return Json.object()
                .with("reader", name)
                .with("effectiveness", Answer.number(reader.effectiveness().estimate()))
                .with("lower", Answer.number(reader.effectiveness().lower()))
                .with("upper", Answer.number(reader.effectiveness().upper()))
                .with("consistency", Answer.number(reader.consistency().estimate()))
                .with("misses", Answer.number(reader.misses()))
                .with("falseAlarms", Answer.number(reader.falseAlarms()));
    }
}
