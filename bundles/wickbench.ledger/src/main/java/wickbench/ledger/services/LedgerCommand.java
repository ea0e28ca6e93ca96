package wickbench.ledger.services;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.person.PersonId;
import wickbench.api.reading.ReadingDoor.Kept;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultDetail;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.acts.Correcting;
import wickbench.ledger.papers.Packing.Wanted;

/** Looking through results, showing one in full, correcting it; and acting on what they say. */
@Command(name = "ledger", synopsisSubcommandLabel = "COMMAND")
final class LedgerCommand extends TrendCommands {
    private static final int DIFFERS = 1;
    private static final int SHOWN_TO_PEOPLE = 100;
    private static final int PAGE = 1000;

    private final Results results;
    private final Correcting correcting;
    private final ResultExport export;
    private final Print print;
    private final PackCommands packs;

    LedgerCommand(Results results, Doors doors, ResultExport export, Terminal terminal, Print print, ActsPrint acts) {
        super(doors, results, terminal, acts);
        this.results = results;
        correcting = doors.correcting();
        this.export = export;
        this.print = print;
        packs = new PackCommands(doors.packing(), terminal, () -> print.cells().clock());
    }

    @Command(name = "list")
    int list(
            @Mixin FilterOptions options,
            @Option(names = "--limit", paramLabel = "N") Optional<Integer> limit,
            @Option(names = "--after", paramLabel = "ID") Optional<String> after,
            @Option(names = "--count") boolean count) {
        limit.filter(some -> some < 1).ifPresent(some -> {
            throw new BadInput(Complaint.of("--limit", LedgerWords.get("limit.expected", some)));
        });
        Filter filter = options.filter();
        if (count) {
            print.count(results.count(filter));
            print.unread(results.unread());
            return 0;
        }
        int most = limit.orElse(terminal.json() ? Integer.MAX_VALUE : SHOWN_TO_PEOPLE);
        List<ResultRow> rows = read(filter, after.map(id -> found(id).row()), most);
        print.list(rows, terminal.json() ? rows.size() : results.count(filter));
        print.unread(results.unread());
        return 0;
    }

    @Command(name = "export")
    int export(@Mixin FilterOptions options, @Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
        Filter filter = options.filter();
        export.write(filter, print.cells(), out);
        terminal.note(LedgerWords.get("export.done", results.count(filter), out));
        print.unread(results.unread());
        return 0;
    }

    @Command(name = "pack")
    int pack(
            @Mixin FilterOptions options,
            @Option(names = "--everything") boolean everything,
            @Option(names = "--out", required = true, paramLabel = "DIR") Path out) {
        return packs.pack(new Wanted(options.filter(), everything, out));
    }

    @Command(name = "kept")
    int kept() {
        return packs.kept();
    }

    @Command(name = "show")
    int show(@Parameters(paramLabel = "ID") String id) {
        ResultDetail found = found(id);
        print.detail(found);
        print.unread(results.unread());
        return found.asRecorded() ? 0 : DIFFERS;
    }

    @Command(name = "correct")
    int correct(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign,
            @Mixin ChangedCells changed) {
        PersonId by = terminal.actorOrRefuse();
        if (reason.isBlank()) {
            throw new BadInput(Complaint.of("--reason", LedgerWords.get("correct.reason")));
        }
        ResultDetail before = found(id);
        Kept kept = ChangedCells.named(
                () -> correcting.correct(before, changed.given(), reason.strip(), by, passphrase(by, sign)));
        print.detail(found(before.row().id().toString()));
        if (!kept.added()) {
            terminal.note(LedgerWords.get("correct.known", kept.ref()));
        }
        return 0;
    }

    @Override
    List<ResultRow> read(Filter filter, int most) {
        return read(filter, Optional.empty(), most);
    }

    private List<ResultRow> read(Filter filter, Optional<ResultRow> first, int most) {
        List<ResultRow> rows = new ArrayList<>();
        Optional<ResultRow> after = first;
        boolean more = true;
        while (more && rows.size() < most) {
            ResultPage page = results.page(filter, Sort.NEWEST_FIRST, after, Math.min(PAGE, most - rows.size()));
            rows.addAll(page.rows());
            after = page.rows().stream().reduce((older, newer) -> newer);
            more = page.more();
        }
        return rows;
    }
}
