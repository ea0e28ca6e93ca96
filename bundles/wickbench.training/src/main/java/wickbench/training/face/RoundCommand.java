package wickbench.training.face;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Methods;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.api.report.ReportPrinter;
import wickbench.api.words.Coded;
import wickbench.training.Call;
import wickbench.training.Competences;
import wickbench.training.Design;
import wickbench.training.Operating;
import wickbench.training.PanelStrip;
import wickbench.training.Round;
import wickbench.training.RoundPlan;
import wickbench.training.Rounds;
import wickbench.training.StripClass;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;
import wickbench.training.round.Meaning;

/** {@code round}: blind rounds, from their odds to their scores. */
@Command(name = "round", synopsisSubcommandLabel = "COMMAND")
final class RoundCommand {
    private final Rounds rounds;
    private final Competences book;
    private final Optional<Methods> methods;
    private final Instant now;
    private final Hands hands;
    private final List<ReportPrinter> printers;
    private final Terminal terminal;

    RoundCommand(
            Rounds rounds,
            Competences book,
            Optional<Methods> methods,
            Instant now,
            Hands hands,
            List<ReportPrinter> printers,
            Terminal terminal) {
        this.rounds = rounds;
        this.book = book;
        this.methods = methods;
        this.now = now;
        this.hands = hands;
        this.printers = printers;
        this.terminal = terminal;
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

    @Command(name = "open")
    int open(
            @Parameters(paramLabel = "ID") String id,
            @Mixin DesignOptions options,
            @Option(names = "--method", required = true, paramLabel = "METHOD") String method,
            @Option(names = "--readers", required = true, paramLabel = "ID,ID") String readers,
            @Option(names = "--experts", paramLabel = "ID,ID") String experts,
            @Option(names = "--panel", paramLabel = "FILE.csv") Path panel,
            @Option(names = "--key-by", required = true, paramLabel = "TEXT") String keyMaker,
            @Option(names = "--format", paramLabel = "FORMAT") String format,
            @Option(names = "--develop", paramLabel = "SECONDS") Long develop,
            @Option(names = "--window", paramLabel = "SECONDS") Long window,
            @Option(names = "--sheet", paramLabel = "FILE.csv") Path sheet,
            @Option(names = "--labels", paramLabel = "FILE.csv") Path labels) {
        List<PanelStrip> strips = panel == null ? List.of() : PanelSheet.read(panel);
        Map<StripClass, Integer> counts = panel == null ? options.counts() : PanelSheet.counts(strips);
        Optional<Method> issued = methods.flatMap(each -> each.inForce(Typed.method(method), now));
        RoundPlan plan = new RoundPlan(
                id,
                Typed.method(method),
                format(format, issued),
                seconds("--develop", develop, issued.map(each -> each.timing().develop())),
                seconds("--window", window, issued.map(each -> each.timing().window())),
                options.design(counts, rounds),
                Typed.people("--readers", readers),
                Typed.people("--experts", experts),
                strips,
                keyMaker);
        Rounds.Prepared prepared = rounds.open(plan, hands.actor());
        if (sheet != null) {
            new CallSheet(prepared.round(), book.zone()).write(sheet);
            terminal.note(TrainingWords.get("file.written", sheet));
        }
        if (labels != null) {
            Labels.write(prepared.key(), labels);
            terminal.note(TrainingWords.get("labels.written", labels));
        }
        return shown(prepared.round());
    }

    private static Format format(String said, Optional<Method> issued) {
        return Optional.ofNullable(said)
                .map(code -> Typed.of("--format", code, each -> Coded.of(Format.class, each)))
                .or(() -> issued.map(Method::format))
                .orElseThrow(() -> Said.wrong("--format", "open.unknown-method"));
    }

    private static Duration seconds(String option, Long said, Optional<Duration> issued) {
        return Optional.ofNullable(said)
                .map(Duration::ofSeconds)
                .or(() -> issued)
                .orElseThrow(() -> Said.wrong(option, "open.unknown-method"));
    }

    @Command(name = "call")
    int call(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--reader", paramLabel = "PERSON") String reader,
            @Option(names = "--sheet", paramLabel = "FILE.csv") Path sheet,
            @Option(names = "--strip", paramLabel = "CODE") String strip,
            @Option(names = "--control", paramLabel = "SEEN") String control,
            @Option(names = "--hook", paramLabel = "SEEN") String hook,
            @Option(names = "--test", paramLabel = "SEEN") String test,
            @Option(names = "--outcome", paramLabel = "OUTCOME") String outcome,
            @Option(names = "--started", paramLabel = "TIME") String started,
            @Option(names = "--read", paramLabel = "TIME") String read) {
        Round round = known(id);
        PersonId caller = reader == null ? terminal.actorOrRefuse() : Typed.person("--reader", reader);
        if ((sheet == null) == (strip == null)) {
            throw Said.wrong("--sheet", "call.sheet-or-strip");
        }
        List<Call> calls = sheet == null
                ? List.of(one(round, strip, lines(round, control, hook, test), outcome, started, read))
                : new CallSheet(round, book.zone()).read(sheet);
        Optional<String> source =
                Optional.ofNullable(sheet).map(file -> file.getFileName().toString());
        return shown(rounds.call(id, caller, calls, source, hands.actor()));
    }

    private static Strip lines(Round round, String control, String hook, String test) {
        Map<LineRole, String> said = new EnumMap<>(LineRole.class);
        Optional.ofNullable(control).ifPresent(text -> said.put(LineRole.CONTROL, text));
        Optional.ofNullable(hook).ifPresent(text -> said.put(LineRole.HOOK, text));
        Optional.ofNullable(test).ifPresent(text -> said.put(LineRole.TEST, text));
        Map<LineRole, Seen> seen = new EnumMap<>(LineRole.class);
        said.forEach((role, text) -> seen.put(role, Typed.of("--" + role.code(), text, CallSheet::seen)));
        return Typed.of("lines", "", none -> new Strip(round.plan().format(), seen));
    }

    private Call one(Round round, String code, Strip strip, String outcome, String started, String read) {
        Outcome called = outcome == null
                ? Meaning.of(strip)
                : Typed.of("--outcome", outcome, each -> Coded.of(Outcome.class, each));
        return new Call(
                CallSheet.code(code),
                strip,
                called,
                Optional.ofNullable(started).map(text -> Typed.time("--started", text, book.zone())),
                Optional.of(read == null ? now : Typed.time("--read", read, book.zone())));
    }

    @Command(name = "close")
    int close(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--without", paramLabel = "ID,ID") String without,
            @Option(names = "--reason", paramLabel = "TEXT") String reason) {
        return shown(rounds.close(id, Typed.people("--without", without), Optional.ofNullable(reason), hands.actor()));
    }

    @Command(name = "score")
    int score(@Parameters(paramLabel = "ID") String id) {
        Round round = rounds.score(id, hands.signer());
        shown(round);
        return round.scores().stream().allMatch(score -> score.passed()) ? 0 : 1;
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
                new Print(book.zone()).time(round.opened()),
                RoundPrint.design(round.plan().design()),
                String.join(", ", round.missing().stream().map(PersonId::value).toList()));
    }

    @Command(name = "show")
    int show(@Parameters(paramLabel = "ID") String id, @Option(names = "--out", paramLabel = "FILE") Path out) {
        Round round = known(id);
        if (out != null) {
            PrintedFile.write(out, printers, new RoundReport(book.zone()).of(round, rounds.agreement(id)));
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

    private Round known(String id) {
        return rounds.find(id).orElseThrow(() -> Said.wrong("ID", "round.unknown", id));
    }

    private int shown(Round round) {
        if (terminal.json()) {
            Json.Obj json = RoundShown.round(round);
            terminal.json(
                    json.withOptional("agreement", rounds.agreement(round.id()).map(RoundShown::agreement)));
            return 0;
        }
        RoundPrint.head(round).forEach(terminal::line);
        if (round.state() == Round.State.OPEN) {
            terminal.table(
                    Print.columns("person", "called"),
                    round.plan().callers().stream()
                            .map(person -> List.of(
                                    person.value(),
                                    round.callsOf(person).size() + "/"
                                            + round.codes().size()))
                            .toList());
        }
        if (!round.scores().isEmpty()) {
            terminal.table(
                    RoundPrint.scoreHeader(),
                    round.scores().stream().map(RoundPrint::scoreRow).toList());
        }
        rounds.agreement(round.id())
                .ifPresent(found -> RoundPrint.agreement(found).forEach(terminal::line));
        return 0;
    }
}
