package wickbench.plant.face;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.reading.Visual;
import wickbench.plant.PlantState;
import wickbench.plant.clean.Changed;
import wickbench.plant.clean.Confirmed;
import wickbench.plant.clean.SeriesAsked;
import wickbench.plant.clean.SeriesRun;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.WorstCase;

/** Commands by which a clean is shown to work, and by which quality answers for what was missed. */
abstract class CleanCommands extends StateCommands {

    CleanCommands(Doors doors) {
        super(doors);
    }

    @Command(name = "cleans")
    int cleans() {
        print().cleans(state().cleans());
        return 0;
    }

    @Command(name = "worst")
    int worst(@Parameters(paramLabel = "CLEAN") String id) {
        Validation clean = known(id);
        print().worst(WorstCase.rank(
                state().productsOf(clean.clean().line()), clean.clean().removes()));
        return 0;
    }

    @Command(name = "validate")
    int validate(
            @Parameters(paramLabel = "CLEAN") String id,
            @Option(names = "--product", paramLabel = "PRODUCT") Optional<String> product,
            @Option(names = "--reason", paramLabel = "TEXT") List<String> reasons,
            @Option(names = "--allergen", paramLabel = "ALLERGEN") List<String> allergens,
            @Option(names = "--point", required = true, paramLabel = "PLACE=METHOD") List<String> points,
            @Option(names = "--sign") boolean sign) {
        SeriesAsked asked = new SeriesAsked(
                id,
                product,
                some(reasons),
                Set.copyOf(Typed.allergens("--allergen", some(allergens))),
                points.stream().map(text -> Typed.sampling("--point", text)).toList());
        doors.keeping().open(doors.keeping().choose(asked), doors.hands().actor(sign));
        return shown(id);
    }

    @Command(name = "ran")
    int ran(
            @Parameters(paramLabel = "CLEAN") String id,
            @Option(names = "--visual", required = true, paramLabel = "clean|soiled") String visual,
            @Option(names = "--reading", paramLabel = "ID") List<String> readings,
            @Option(names = "--at", paramLabel = "TIME") Optional<String> at) {
        Visual eye = Typed.choice("--visual", visual, Visual.class);
        Instant when = at(at);
        doors.keeping()
                .ran(
                        new SeriesRun(id, eye, Typed.ids("--reading", some(readings)), when),
                        doors.hands().actor(false));
        return shown(id);
    }

    @Command(name = "confirm")
    int confirm(
            @Parameters(paramLabel = "CLEAN") String id,
            @Option(names = "--until", required = true, paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        doors.keeping()
                .confirm(
                        new Confirmed(id, Typed.day("--until", until), reason),
                        doors.hands().signer());
        return shown(id);
    }

    @Command(name = "lapse")
    int lapse(
            @Parameters(paramLabel = "CLEAN") String id,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        doors.keeping().lapse(new Changed(id, reason), doors.hands().actor(sign));
        return shown(id);
    }

    @Command(name = "excuse")
    int excuse(
            @Parameters(paramLabel = "RULE@TIME") String key,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        int at = key.lastIndexOf('@');
        if (at < 1) {
            throw Typed.wrong("RULE@TIME", "due.unknown", key);
        }
        Instant occasion =
                Typed.time("RULE@TIME", key.substring(at + 1), doors.book().zone());
        doors.keeping()
                .excuse(key.substring(0, at), occasion, reason, doors.hands().signer());
        return 0;
    }

    @Command(name = "show")
    int show() {
        print().plant(state());
        return 0;
    }

    @Command(name = "allergens")
    int allergens(@Option(names = "--list", paramLabel = "LIST") Optional<String> list) {
        print().allergens(list);
        return 0;
    }

    private int shown(String clean) {
        print().cleans(List.of(known(clean)));
        return 0;
    }

    private Validation known(String id) {
        return state().clean(id).orElseThrow(() -> Typed.wrong("CLEAN", "clean.unknown", id));
    }

    private PlantState state() {
        return doors.book().at(doors.book().now());
    }

    private PlantPrint print() {
        return new PlantPrint(doors.terminal());
    }
}
