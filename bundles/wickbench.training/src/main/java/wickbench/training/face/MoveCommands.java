package wickbench.training.face;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.training.Terms;
import wickbench.training.book.TrainingWords;

/** The moves of one competence, and the terms by which it ends. */
abstract class MoveCommands extends EvidenceCommands {
    MoveCommands(Doors doors, InstantSource clock, Hands hands, Terminal terminal) {
        super(doors, clock, hands, terminal);
    }

    @Command(name = "authorise")
    int authorise(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--until", paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        return shown(doors.training().authorise(known(id), Typed.method(method), day(until), reason, hands.signer()));
    }

    @Command(name = "restore")
    int restore(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--until", paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        return shown(doors.training().restore(known(id), Typed.method(method), day(until), reason, hands.signer()));
    }

    private static Optional<LocalDate> day(String until) {
        return Optional.ofNullable(until).map(text -> Typed.date("--until", text));
    }

    @Command(name = "suspend")
    int suspend(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--method", paramLabel = "METHOD") String method,
            @Option(names = "--since", paramLabel = "TIME") String since,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        PersonId person = known(id);
        Optional<MethodId> of = Optional.ofNullable(method).map(Typed::method);
        Optional<Instant> from = Optional.ofNullable(since).map(text -> time("--since", text));
        doors.training().suspend(person, of, from, reason, hands.signer());
        terminal.note(TrainingWords.get("suspend.touched"));
        return shown(doors.book().person(person, now()).competences());
    }

    @Command(name = "acknowledge")
    int acknowledge(@Parameters(paramLabel = "METHOD") String method) {
        return shown(doors.training().acknowledge(Typed.method(method), hands.signer()));
    }

    @Command(name = "terms")
    int terms(
            @Option(names = "--months", paramLabel = "N") Integer months,
            @Option(names = "--untested-weeks", paramLabel = "N") Integer weeks,
            @Option(names = "--remind-days", paramLabel = "N") Integer days) {
        Terms before = doors.book().terms(now());
        boolean changes = months != null || weeks != null || days != null;
        Terms held = changes ? doors.training().terms(changed(before, months, weeks, days), hands.actor()) : before;
        if (terminal.json()) {
            terminal.json(TrainingJson.terms(held));
        } else {
            terminal.line(TrainingWords.get("terms.shown", held.months(), held.untestedWeeks(), held.remindDays()));
        }
        return 0;
    }

    private static Terms changed(Terms before, Integer months, Integer weeks, Integer days) {
        return Typed.of(
                "terms",
                "",
                none -> new Terms(
                        months == null ? before.months() : months,
                        weeks == null ? before.untestedWeeks() : weeks,
                        days == null ? before.remindDays() : days));
    }
}
