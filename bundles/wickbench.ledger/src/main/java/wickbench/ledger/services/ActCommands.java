package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
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
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.acts.Deciding.Wish;
import wickbench.ledger.acts.Move;
import wickbench.ledger.acts.Outside;
import wickbench.ledger.acts.Reviewing.Waiting;

/** Commands by which people act on results: review, decide, put down what a laboratory reported. */
abstract class ActCommands {
    static final int WANTING = 1;

    final Doors doors;
    final Terminal terminal;
    final ActsPrint acts;
    private final Results results;

    ActCommands(Doors doors, Results results, Terminal terminal, ActsPrint print) {
        this.doors = doors;
        this.results = results;
        this.terminal = terminal;
        acts = print;
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
            acts.waiting(waiting);
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
        acts.cases(
                id.isPresent()
                        ? doors.deciding().of(found(id.get()).row().id()).stream()
                                .toList()
                        : doors.deciding().open());
        return 0;
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

    @Command(name = "outside-reports")
    public int outsideReports(
            @Mixin OutsideSearch search, @Option(names = "--because-of", paramLabel = "ID") Optional<String> because) {
        Predicate<Outside> wanted = search.wanted(
                because.map(id -> found(id).row().id()), acts.site().now().zone());
        new OutsidePrint(terminal, results, acts.site())
                .list(doors.deciding().outside(Integer.MAX_VALUE).stream()
                        .filter(entry -> Outside.of(entry).filter(wanted).isPresent())
                        .toList());
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
