package wickbench.bench.owed;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
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
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.OwedWork;
import wickbench.api.owed.VisualCheck;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;

/** {@code bench}: what is owed, and the entries that answer it other than readings. */
@Component(property = CommandSet.NAME + "=bench")
public final class BenchCommand implements CommandSet {
    private final OwedWork work;

    @Activate
    public BenchCommand(@Reference OwedWork work) {
        this.work = work;
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
            PersonId cleaner = by.map(BenchCommand::person).orElse(actor);
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

    private static PersonId person(String text) {
        try {
            return new PersonId(text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("--by", e.getMessage()));
        }
    }

    private static <E extends Enum<E> & Coded> E code(String option, Class<E> type, String text) {
        try {
            return Coded.of(type, text);
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of(option, e.getMessage()));
        }
    }
}
