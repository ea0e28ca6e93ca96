package wickbench.figures.commands;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.figures.sums.KeptSums;
import wickbench.figures.sums.Sums;

/** {@code figures kept}: the sums that were kept as entries, or one of them. */
@Command(name = "kept")
final class KeptCommand implements Callable<Integer> {
    private final KeptSums kept;
    private final Terminal terminal;

    @Parameters(arity = "0..1", paramLabel = "ENTRY")
    private Optional<String> entry = Optional.empty();

    @Option(names = "--most", paramLabel = "N")
    private int most = 100;

    KeptCommand(KeptSums kept, Terminal terminal) {
        this.kept = kept;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (entry.isPresent()) {
            show(found(entry.get()));
        } else {
            list(kept.newest(most));
        }
        return 0;
    }

    private KeptSums.Kept found(String text) {
        try {
            return kept.find(EntryRef.parse(text))
                    .orElseThrow(() -> new BadInput(Complaint.of(text, FiguresWords.get("kept.none-there"))));
        } catch (IllegalArgumentException e) {
            throw new BadInput(Complaint.of("ENTRY", e.getMessage()));
        }
    }

    private void list(List<KeptSums.Kept> found) {
        if (terminal.json()) {
            terminal.json(Json.array(found.stream().map(KeptCommand::json).toList()));
        } else if (found.isEmpty()) {
            terminal.line(FiguresWords.get("kept.none"));
        } else {
            terminal.table(
                    List.of(
                            FiguresWords.get("kept.entry"),
                            FiguresWords.get("kept.at"),
                            FiguresWords.get("kept.by"),
                            FiguresWords.get("kept.sum"),
                            FiguresWords.get("kept.about")),
                    found.stream().map(KeptCommand::row).toList());
        }
    }

    private static List<String> row(KeptSums.Kept each) {
        return List.of(
                each.entry().toString(),
                time(each.at()),
                each.by().value(),
                each.what().sum(),
                each.what().about().orElse(""));
    }

    private void show(KeptSums.Kept found) {
        if (terminal.json()) {
            terminal.json(json(found));
            return;
        }
        String id = found.what().sum();
        terminal.line(FiguresWords.get(
                "kept.head",
                found.entry(),
                Sums.find(id).map(sum -> sum.title()).orElse(id),
                time(found.at()),
                found.by()));
        found.what().about().ifPresent(terminal::line);
        terminal.line("");
        List<List<String>> inputs = new ArrayList<>();
        found.what().given().texts().forEach((name, text) -> inputs.add(List.of(name, text)));
        found.what()
                .given()
                .tables()
                .forEach((name, table) -> inputs.add(List.of(
                        name,
                        FiguresWords.get(
                                "kept.rows", table.source(), table.lines().size()))));
        terminal.table(List.of(FiguresWords.get("kept.input"), FiguresWords.get("print.value")), inputs);
        terminal.line("");
        new AnswerPrint(terminal).print(found.what().figures(), List.of());
    }

    private static Json.Obj json(KeptSums.Kept each) {
        return Json.object()
                .with("entry", each.entry().toString())
                .with("at", each.at().toString())
                .with("by", each.by().value())
                .with("kept", each.what().body());
    }

    private static String time(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
