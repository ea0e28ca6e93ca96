package wickbench.ledger.services;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;

/** Commands about releases: how a batch or line stands, what a line asks for, letting it go. */
abstract class ReleaseCommands extends ActCommands {
    ReleaseCommands(Doors doors, Results results, Terminal terminal, ActsPrint print) {
        super(doors, results, terminal, print);
    }

    @Command(name = "batch")
    public int batch(@Parameters(paramLabel = "BATCH") String name) {
        return standing(Subject.batch(name));
    }

    @Command(name = "line")
    public int line(@Parameters(paramLabel = "LINE") String name) {
        return standing(Subject.line(name));
    }

    private int standing(Subject subject) {
        Standing standing = doors.releasing().standing(subject);
        acts.standing(standing);
        return standing.mayGo() ? 0 : WANTING;
    }

    @Command(name = "release")
    public int release(
            @Parameters(paramLabel = "batch|line") String sort,
            @Parameters(paramLabel = "NAME", index = "1") String name,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        PersonId by = terminal.actorOrRefuse();
        Subject subject = new Subject(parsed("batch|line", sort, code -> Coded.of(Subject.Sort.class, code)), name);
        EntryRef entry = doors.releasing().release(subject, reason, by, passphrase(by, sign));
        terminal.note(LedgerWords.get("release.done", name, entry));
        return 0;
    }

    @Command(name = "plan")
    public int plan(
            @Parameters(paramLabel = "LINE", arity = "0..1") Optional<String> line,
            @Option(names = "--point", paramLabel = "PLACE=METHOD") List<String> points,
            @Option(names = "--reason", paramLabel = "TEXT") Optional<String> reason,
            @Option(names = "--sign") boolean sign) {
        if (line.isEmpty()) {
            acts.plans(doors.releasing().plans());
            return 0;
        }
        PersonId by = terminal.actorOrRefuse();
        List<Point> asked = points == null
                ? List.of()
                : points.stream().map(ReleaseCommands::point).toList();
        ReleasePlan plan = new ReleasePlan(
                line.get(),
                asked,
                reason.orElseThrow(() -> new BadInput(Complaint.of("--reason", LedgerWords.get("plan.reason")))));
        terminal.note(LedgerWords.get("plan.done", doors.releasing().plan(plan, by, passphrase(by, sign))));
        return 0;
    }

    private static Point point(String text) {
        int equals = text.lastIndexOf('=');
        if (equals < 1) {
            throw new BadInput(Complaint.of("--point", LedgerWords.get("plan.point", text)));
        }
        return new Point(
                text.substring(0, equals).strip(), parsed("--point", text.substring(equals + 1), MethodId::new));
    }
}
