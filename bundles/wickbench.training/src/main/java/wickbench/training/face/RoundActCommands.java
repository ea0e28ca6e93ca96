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
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Strip;
import wickbench.api.words.Coded;
import wickbench.training.Call;
import wickbench.training.PanelStrip;
import wickbench.training.Round;
import wickbench.training.RoundPlan;
import wickbench.training.Rounds;
import wickbench.training.StripClass;
import wickbench.training.book.Said;
import wickbench.training.book.TrainingWords;

/** What is done in a blind round: opened, called, closed, scored. */
abstract class RoundActCommands extends RoundDesk {
    RoundActCommands(RoundDoors doors, Instant now, Hands hands, Terminal terminal) {
        super(doors, now, hands, terminal);
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
        List<PanelStrip> strips = panel == null ? List.of() : doors.sheets().panel(panel);
        Map<StripClass, Integer> counts = panel == null ? options.counts() : PanelSheet.counts(strips);
        Optional<Method> issued = doors.methods().flatMap(each -> each.inForce(Typed.method(method), now));
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
            doors.sheets().blank(prepared.round(), sheet);
            terminal.note(TrainingWords.get("file.written", sheet));
        }
        if (labels != null) {
            doors.sheets().labels(prepared.key(), labels);
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
                : doors.sheets().calls(round, sheet);
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
                ? Call.meaning(strip)
                : Typed.of("--outcome", outcome, each -> Coded.of(Outcome.class, each));
        return new Call(
                CallSheet.code(code),
                strip,
                called,
                Optional.ofNullable(started)
                        .map(text -> Typed.time("--started", text, doors.book().zone())),
                Optional.of(
                        read == null
                                ? now
                                : Typed.time("--read", read, doors.book().zone())));
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
}
