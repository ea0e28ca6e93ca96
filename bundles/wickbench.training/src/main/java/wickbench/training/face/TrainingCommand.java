package wickbench.training.face;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.UUID;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.training.Due;
import wickbench.training.Matrix;
import wickbench.training.PersonRecord;
import wickbench.training.Round;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** {@code training}: who may test, and everything that speaks for it. */
@Command(name = "training", synopsisSubcommandLabel = "COMMAND")
final class TrainingCommand extends MoveCommands {
    TrainingCommand(Doors doors, InstantSource clock, Hands hands, Terminal terminal) {
        super(doors, clock, hands, terminal);
    }

    @Command(name = "matrix")
    int matrix(
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--out", paramLabel = "FILE") Path out) {
        Matrix matrix = doors.book().matrix(time("--at", at));
        if (out != null) {
            return printed(out, doors.papers().matrix(matrix));
        }
        if (terminal.json()) {
            terminal.json(TrainingJson.matrix(matrix));
        } else if (matrix.people().isEmpty() || matrix.methods().isEmpty()) {
            terminal.line(TrainingWords.get("matrix.none"));
        } else {
            terminal.table(Print.matrixHeader(matrix), Print.matrixRows(matrix));
            terminal.line(TrainingWords.get("caution"));
        }
        return 0;
    }

    @Command(name = "person")
    int person(@Parameters(paramLabel = "ID") String id, @Option(names = "--out", paramLabel = "FILE") Path out) {
        PersonRecord record = doors.book().person(known(id), now());
        if (out != null) {
            return printed(out, doors.papers().person(record));
        }
        if (terminal.json()) {
            terminal.json(TrainingJson.person(record));
            return 0;
        }
        terminal.table(
                Print.competenceHeader(),
                record.competences().stream().map(Print::competenceRow).toList());
        Print print = new Print(doors.book().zone());
        terminal.table(
                Print.happeningHeader(),
                record.happenings().stream().map(print::happeningRow).toList());
        return 0;
    }

    @Command(name = "certificate")
    int certificate(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--out", required = true, paramLabel = "FILE.pdf") Path out) {
        PersonRecord record = doors.book().person(known(id), now());
        return printed(out, doors.papers().certificate(record, now()));
    }

    @Command(name = "due")
    int due() {
        List<Due> due = doors.book().due(now());
        if (terminal.json()) {
            terminal.json(Json.array(due.stream().map(TrainingJson::due).toList()));
        } else if (due.isEmpty()) {
            terminal.line(TrainingWords.get("due.none"));
        } else {
            terminal.table(Print.dueHeader(), due.stream().map(Print::dueRow).toList());
        }
        return 0;
    }

    @Command(name = "seen")
    int seen(@Parameters(paramLabel = "ENTRY|ROUND") String about) {
        UUID entry = doors.rounds()
                .find(about)
                .map(this::scoreOf)
                .orElseGet(() -> Typed.of("ENTRY", about, UUID::fromString));
        doors.training().countersign(entry, hands.signer());
        terminal.line(TrainingWords.get("seen.kept", entry));
        return 0;
    }

    private UUID scoreOf(Round round) {
        return round.scored().orElseThrow(() -> Said.refused("round.not-closed", round.id()));
    }
}
