package wickbench.figures.commands;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import wickbench.figures.detection.Detection;
import wickbench.figures.detection.Dose;
import wickbench.figures.detection.Levels;
import wickbench.figures.detection.Link;
import wickbench.figures.detection.RelativeLimit;

/** {@code figures detection}: from levels, tests and positives to the limit of detection. */
@Command(name = "detection")
final class DetectionCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Parameters(index = "0", paramLabel = "FILE")
    private Path file;

    @Option(names = "--link", paramLabel = "NAME")
    private String link = Link.ONE_HIT.code();

    @Option(names = "--dose", paramLabel = "NAME")
    private Optional<String> dose = Optional.empty();

    @Option(names = "--against", paramLabel = "FILE")
    private Optional<Path> against = Optional.empty();

    @Mixin
    private LevelOption level = new LevelOption();

    @Override
    public Integer call() {
        Link form = Choice.of("--link", link, Link.values(), Link::code);
        Dose scale = dose.map(code -> Choice.of("--dose", code, Dose.values(), Dose::code))
                .orElse(form.usualDose());
        Table table = table(file);
        return figures.answer(table, () -> answer(table, form, scale));
    }

    private Answer answer(Table table, Link form, Dose scale) {
        Levels study = levels(table);
        Answer curve = DetectionAnswer.of(study, Detection.fit(study, form, scale, level.value()), level.value());
        return against.map(other -> compared(curve, study, levels(table(other)), form, scale))
                .orElse(curve);
    }

    private Answer compared(Answer curve, Levels study, Levels reference, Link form, Dose scale) {
        RelativeLimit limit = RelativeLimit.of(study, reference, form, scale, level.value());
        return curve.with(
                        "relative",
                        Answer.limits(limit.ratio())
                                .with("z", Answer.number(limit.z()))
                                .with("p", Answer.number(limit.p())))
                .saying("detection.relative");
    }

    private static Table table(Path file) {
        return TableFile.read(file, "level", "tests", "positives");
    }

    private static Levels levels(Table table) {
        return new Levels(table.numbers(0), table.counts(1, "tests"), table.counts(2, "positives"));
    }
}
