package wickbench.figures.commands;

import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import wickbench.api.json.Json;
import wickbench.figures.level.ReferenceDose;

/** {@code figures doses}: the reference doses, each with how it is known. */
@Command(name = "doses")
final class DosesCommand implements Callable<Integer> {
    @ParentCommand
    private Figures figures;

    @Override
    public Integer call() {
        return figures.answer(() -> Answer.of()
                .with(
                        "doses",
                        Json.array(Stream.concat(
                                        ReferenceDose.consultation().stream(), ReferenceDose.belgianOpinion().stream())
                                .map(DosesCommand::row)
                                .toList()))
                .saying("level.doses")
                .saying("level.caution"));
    }

    private static Json.Obj row(ReferenceDose dose) {
        return Json.object()
                .with("allergen", dose.allergen())
                .with("name", dose.name())
                .with("mgProtein", dose.mg().<Json>map(Json.Num::new).orElse(Json.Null.NULL))
                .with("publication", dose.publication().code())
                .with("known", dose.known().name().toLowerCase(Locale.ROOT));
    }
}
