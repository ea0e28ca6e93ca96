package wickbench.ledger.services;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Deciding.Wish;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Point;
import wickbench.ledger.acts.ReleasePlan;
import wickbench.ledger.acts.Reviewing.Waiting;
import wickbench.ledger.acts.Standing;
import wickbench.ledger.acts.Subject;
import wickbench.ledger.trend.TrendBase;
import wickbench.ledger.trend.Trending;

/** Commands by which people act on results: review, decide, release. */
abstract class ActCommands {
    private static final int WANTING = 1;

    private final Doors doors;
    private final Results results;
    private final Terminal terminal;
    private final ActsPrint print;

    ActCommands(Doors doors, Results results, Terminal terminal, ActsPrint print) {
        this.doors = doors;
        this.results = results;
        this.terminal = terminal;
        this.print = print;
    }

    /** Reads up to so many results that answer a filter. */
    abstract List<ResultRow> read(Filter filter, int most);

    @Command(name = "review")
    public int review(
            @Parameters(paramLabel = "ID", arity = "0..*") List<String> ids,
            @Mixin FilterOptions options,
            @Option(names = "--all") boolean all,
            @Option(names = "--remark", paramLabel = "TEXT") Optional<String> remark,
            @Option(names = "--sign") boolean sign) {
        Filter filter = options.filter();
        boolean chosen = all || !filter.equals(Filter.ALL);
        if ((ids == null || ids.isEmpty()) && !chosen) {
            Waiting waiting = doors.reviewing().waiting();
            print.waiting(waiting);
            return waiting.late() > 0 ? WANTING : 0;
        }
        PersonId by = terminal.actorOrRefuse();
        List<UUID> asked = new ArrayList<>();
        (ids == null ? List.<String>of() : ids)
                .forEach(id -> asked.add(found(id).row().id()));
        if (chosen) {
            read(filter.onlyUnreviewed(true), Integer.MAX_VALUE).forEach(row -> asked.add(row.id()));
        }
        Optional<EntryRef> entry = doors.reviewing().review(asked, remark, by, passphrase(by, sign));
        terminal.note(entry.map(ref -> LedgerWords.get("review.done", asked.size(), ref))
                .orElseGet(() -> LedgerWords.get("review.none")));
        return 0;
    }

    @Command(name = "decide")
    public int decide(
            @Parameters(paramLabel = "ID") String id,
            @Parameters(paramLabel = "MOVE", arity = "0..1", index = "1") Optional<String> move,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--cause", paramLabel = "TEXT") Optional<String> cause,
            @Option(names = "--of-batch", paramLabel = "BATCH") List<String> batches,
            @Option(names = "--sign") boolean sign) {
        PersonId by = terminal.actorOrRefuse();
        EntryRef entry;
        if (move.isEmpty()) {
            DoubtDecision door = doors.doubts()
                    .orElseThrow(() -> new Refusal("ledger.no-bench", LedgerWords.get("decide.no-bench")));
            entry = door.decide(id, reason, by, passphrase(by, sign));
        } else {
            Move meant = parsed("MOVE", move.get(), code -> Coded.of(Move.class, code));
            Wish wish = new Wish(found(id).row().id(), meant, batches == null ? List.of() : batches, reason, cause);
            entry = doors.deciding().decide(wish, by, passphrase(by, sign));
        }
        terminal.note(LedgerWords.get("decide.done", entry));
        return 0;
    }

    @Command(name = "actions")
    public int actions(@Parameters(paramLabel = "ID", arity = "0..1") Optional<String> id) {
        print.cases(
                id.isPresent()
                        ? doors.deciding().of(found(id.get()).row().id()).stream()
                                .toList()
                        : doors.deciding().open());
        return 0;
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
        print.standing(standing);
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
            print.plans(doors.releasing().plans());
            return 0;
        }
        PersonId by = terminal.actorOrRefuse();
        List<Point> asked = points == null
                ? List.of()
                : points.stream().map(ActCommands::point).toList();
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

    @Command(name = "outside")
    public int outside(
            @Mixin OutsideOptions said, @Option(names = "--because-of", paramLabel = "ID") List<String> because) {
        PersonId by = terminal.actorOrRefuse();
        List<UUID> ids = (because == null ? List.<String>of() : because)
                .stream().map(id -> found(id).row().id()).toList();
        terminal.note(LedgerWords.get("outside.done", doors.deciding().reported(said.report(ids), by)));
        return 0;
    }

    @Command(name = "trend")
    public int trend(
            @Mixin FilterOptions options,
            @Option(names = "--events", paramLabel = "positive|invalid", defaultValue = "positive") String events,
            @Option(names = "--chart", paramLabel = "CHART", defaultValue = "p") String chart) {
        new TrendPrint(terminal)
                .print(doors.trending()
                        .of(new Trending.Asked(
                                options.filter(),
                                parsed("--events", events, code -> Coded.of(Trending.Events.class, code)),
                                parsed("--chart", chart, code -> Coded.of(Trending.Kind.class, code)))));
        return 0;
    }

    @Command(name = "base")
    public int base(
            @Option(names = "--from", required = true, paramLabel = "DATE") LocalDate from,
            @Option(names = "--to", required = true, paramLabel = "DATE") LocalDate to,
            @Option(names = "--line", paramLabel = "LINE") Optional<String> line,
            @Option(names = "--place", paramLabel = "PLACE") Optional<String> place,
            @Option(names = "--method", paramLabel = "ID") Optional<String> method,
            @Option(names = "--target", paramLabel = "NAME") Optional<String> target,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        PersonId by = terminal.actorOrRefuse();
        if (to.isBefore(from)) {
            throw new BadInput(Complaint.of("--to", LedgerWords.get("to.before-from", to, from)));
        }
        TrendBase base = new TrendBase(
                line, place, method.map(id -> parsed("--method", id, MethodId::new)), target, from, to, reason);
        terminal.note(LedgerWords.get("trend.based", doors.trending().base(base, by, passphrase(by, sign))));
        return 0;
    }

    final Optional<Passphrase> passphrase(PersonId by, boolean sign) {
        return sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
    }

    final ResultDetail found(String id) {
        Optional<ResultDetail> found =
                id.indexOf(':') >= 0 ? results.find(id(id, EntryRef::parse)) : results.find(id(id, UUID::fromString));
        return found.orElseThrow(() -> new BadInput(Complaint.of("ID", LedgerWords.get("id.unknown", id))));
    }

    private static <T> T id(String id, Function<String, T> parse) {
        try {
            return parse.apply(id);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ID", LedgerWords.get("id.expected", id)));
        }
    }

    static <T> T parsed(String name, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(name, e.getMessage()));
        }
    }
}
