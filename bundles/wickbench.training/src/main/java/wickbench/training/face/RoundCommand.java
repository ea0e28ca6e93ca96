package wickbench.training.face;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.Round;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** {@code round}: blind rounds, from their odds to their scores. */
@Command(name = "round", synopsisSubcommandLabel = "COMMAND")
final class RoundCommand extends RoundActCommands {
    RoundCommand(RoundDoors doors, Instant now, Hands hands, Terminal terminal) {
        super(doors, now, hands, terminal);
    }

    @Command(name = "design")
    int design(@Mixin DesignOptions options) {
        Design design = options.design(options.counts(), rounds);
        if (design.total() < 1) {
            throw Said.wrong("strips", "round.size", Design.MOST, 0);
        }
        Operating operating = rounds.operating(design, options.poor(), options.good());
        if (terminal.json()) {
            terminal.json(RoundShown.operating(operating));
        } else {
            RoundPrint.operating(operating).forEach(terminal::line);
        }
        return 0;
    }

    @Command(name = "list")
    int list() {
        List<Round> all = rounds.all();
        if (terminal.json()) {
            terminal.json(Json.array(all.stream().map(RoundShown::round).toList()));
        } else if (all.isEmpty()) {
            terminal.line(TrainingWords.get("round.none"));
        } else {
            terminal.table(
                    Print.columns("round", "state", "method", "opened", "strips", "missing"),
                    all.stream().map(this::row).toList());
        }
        return 0;
    }

    private List<String> row(Round round) {
        return List.of(
                round.id(),
                TrainingWords.get("round-state." + round.state().code()),
                round.plan().method().value(),
                new Print(doors.book().zone()).time(round.opened()),
                RoundPrint.design(round.plan().design()),
                String.join(", ", round.missing().stream().map(PersonId::value).toList()));
    }

    @Command(name = "show")
    int show(@Parameters(paramLabel = "ID") String id, @Option(names = "--out", paramLabel = "FILE") Path out) {
        Round round = known(id);
        if (out != null) {
            doors.papers().print(doors.papers().round(round), out);
            terminal.note(TrainingWords.get("file.written", out));
            return 0;
        }
        return shown(round);
    }

    @Command(name = "compare")
    int compare(
            @Parameters(paramLabel = "ID") String first,
            @Parameters(paramLabel = "ID2") String second,
            @Option(names = "--reader", required = true, paramLabel = "PERSON") String reader) {
        var compared = rounds.compare(Typed.person("--reader", reader), first, second);
        if (terminal.json()) {
            terminal.json(RoundShown.compared(compared));
        } else {
            terminal.line(RoundPrint.compared(compared));
        }
        return 0;
    }
}
