package wickbench.bench.owed;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.authority.Passphrase;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.CommandSet;
import wickbench.api.command.Terminal;
import wickbench.api.gate.Question;
import wickbench.api.home.Home;
import wickbench.api.lot.LotId;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;
import wickbench.api.method.Methods;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.VisualCheck;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.api.reading.RunAdvice;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;

/** {@code bench}: whether a strip may be started, what is owed, and the entries that answer it other than readings. */
@Component(property = CommandSet.NAME + "=bench")
public final class BenchCommand implements CommandSet {
    private final OwedWork work;
    private final RunAdvice advice;
    private final Methods methods;
    private final Home home;

    @Activate
    public BenchCommand(
            @Reference OwedWork work, @Reference RunAdvice advice, @Reference Methods methods, @Reference Home home) {
        this.work = work;
        this.advice = advice;
        this.methods = methods;
        this.home = home;
    }

    @Override
    public Object commands(Terminal terminal) {
        return new Group(terminal);
    }

    @Command(name = "bench", synopsisSubcommandLabel = "COMMAND")
    private final class Group {
        private final Terminal terminal;

        Group(Terminal terminal) {
            this.terminal = terminal;
        }

        @Command(name = "owed")
        int owed(@Option(names = "--because-of", paramLabel = "ENTRY") Optional<String> owes) {
            OwedPrint.print(owes.map(id -> work.of(uuid(id))).orElseGet(work::open), terminal);
            return 0;
        }

        @Command(name = "clean")
        int clean(
                @Option(names = "--place", required = true) String place,
                @Option(names = "--line") Optional<String> line,
                @Option(names = "--procedure", required = true) String procedure,
                @Option(names = "--by", paramLabel = "PERSON") Optional<String> by,
                @Option(names = "--ended", required = true, paramLabel = "TIME") String ended) {
            PersonId actor = terminal.actorOrRefuse();
            PersonId cleaner =
                    by.map(text -> parsed("--by", text, PersonId::new)).orElse(actor);
            return told(work.cleaned(new CleanDone(place, line, procedure, cleaner, instant(ended)), actor));
        }

        @Command(name = "look")
        int look(
                @Option(names = "--place", required = true) String place,
                @Option(names = "--line") Optional<String> line,
                @Option(names = "--result", required = true, paramLabel = "clean|soiled") String result,
                @Option(names = "--at", required = true, paramLabel = "TIME") String at) {
            PersonId actor = terminal.actorOrRefuse();
            Visual seen = code("--result", Visual.class, result);
            return told(work.looked(new VisualCheck(place, line, seen, actor, instant(at)), actor));
        }

        @Command(name = "neighbours")
        int neighbours(
                @Parameters(paramLabel = "ENTRY") String reading,
                @Parameters(paramLabel = "POINT", arity = "0..*", index = "1..*") List<String> points) {
            List<String> named = points == null ? List.of() : points;
            return told(work.neighbours(uuid(reading), named, terminal.actorOrRefuse()));
        }

        @Command(name = "settle")
        int settle(
                @Parameters(paramLabel = "ENTRY") String owes,
                @Parameters(paramLabel = "OWED") String owed,
                @Option(names = "--reason", required = true) String reason,
                @Option(names = "--sign") boolean sign) {
            PersonId by = terminal.actorOrRefuse();
            Optional<Passphrase> passphrase =
                    sign ? Optional.of(Passphrase.of(terminal.passphrase(by.value()))) : Optional.empty();
            return told(work.settle(uuid(owes), code("OWED", Owed.class, owed), reason, by, passphrase));
        }

        @Command(name = "may")
        int may(
                @Parameters(paramLabel = "METHOD") String method,
                @Option(names = "--lot", required = true, paramLabel = "LOT") String lot,
                @Option(names = "--operator", paramLabel = "PERSON") Optional<String> operator,
                @Option(names = "--observer", paramLabel = "PERSON") Optional<String> observer,
                @Option(names = "--at", paramLabel = "TIME") Optional<String> at,
                @Option(names = "--lot-check") boolean lotCheck) {
            PersonId who = operator.map(text -> parsed("--operator", text, PersonId::new))
                    .orElseGet(terminal::actorOrRefuse);
            Instant when =
                    at.map(BenchCommand::instant).orElseGet(() -> home.clock().instant());
            Method asked = inForce(parsed("METHOD", method, MethodId::new), when);
            new MayStart(advice, terminal)
                    .ask(new Question(
                            asked.ref(),
                            asked.route(),
                            parsed("--lot", lot, LotId::new),
                            who,
                            observer.map(text -> parsed("--observer", text, PersonId::new)),
                            lotCheck,
                            when));
            return 0;
        }

        private int told(Object entry) {
            terminal.note(OwedWords.get("owed.recorded", entry));
            return 0;
        }
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(text, OwedWords.get("input.entry")));
        }
    }

    private static Instant instant(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new BadInput(Complaint.of(text, OwedWords.get("input.time")));
        }
    }

    /** What was not in force then is asked for in the version that was issued last, so that the gate can say so. */
    private Method inForce(MethodId id, Instant at) {
        List<IssuedMethod> versions = methods.versions(id);
        if (versions.isEmpty()) {
            throw new BadInput(Complaint.of("METHOD", OwedWords.get("start.method", id)));
        }
        return methods.inForce(id, at)
                .orElseGet(() -> versions.get(versions.size() - 1).method());
    }

    private static <T> T parsed(String option, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(option, e.getMessage()));
        }
    }

    private static <E extends Enum<E> & Coded> E code(String option, Class<E> type, String text) {
        return parsed(option, text, code -> Coded.of(type, code));
    }
}
