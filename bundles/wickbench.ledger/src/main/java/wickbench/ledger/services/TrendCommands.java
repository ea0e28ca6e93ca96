package wickbench.ledger.services;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.ledger.Results;
import wickbench.ledger.trend.TrendBase;
import wickbench.ledger.trend.Trending;

/** Commands about trends: whether something has changed, and by which period that is measured. */
abstract class TrendCommands extends ReleaseCommands {
    TrendCommands(Doors doors, Results results, Terminal terminal, ActsPrint print) {
        super(doors, results, terminal, print);
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
}
