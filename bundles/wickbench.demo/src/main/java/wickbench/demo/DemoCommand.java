package wickbench.demo;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.api.check.Refusal;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Words;
import wickbench.demo.Generator.Made;

/** {@code demo}: founds a home of the invented plant and fills it. */
@Command(name = "demo")
final class DemoCommand implements Callable<Integer> {
    private static final int MONTHS = 12;

    private final Doors doors;
    private final Terminal terminal;
    private final Words words = Words.of(DemoCommand.class, "demo");

    @Option(names = "--until", paramLabel = "DATE")
    private LocalDate until;

    @Option(names = "--months", paramLabel = "N")
    private int months = MONTHS;

    @Option(names = "--seed", paramLabel = "N")
    private long seed = 1;

    DemoCommand(Doors doors, Terminal terminal) {
        this.doors = doors;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (doors.journal().founding().isPresent()) {
            throw new Refusal("home.founded", words.get("founded", doors.home().folder()));
        }
        if (months < 1 || months > MONTHS) {
            throw new BadInput(Complaint.of("--months", words.get("months", MONTHS, months)));
        }
        LocalDate today = LocalDate.ofInstant(
                doors.home().clock().instant(), DemoFiles.plant().zone());
        LocalDate end = until == null ? today : until;
        if (end.isAfter(today)) {
            throw new BadInput(Complaint.of("--until", words.get("later", end, today)));
        }
        print(new Generator(doors).make(seed, end.minusMonths(months), end, terminal.progress(words.get("progress"))));
        return 0;
    }

    private void print(Made made) {
        if (terminal.json()) {
            terminal.json(json(made));
            return;
        }
        terminal.line(words.get(
                "made",
                made.plant().name(),
                doors.home().folder(),
                made.span().from(),
                made.span().until().minusDays(1)));
        terminal.line(words.get("counts", made.outcomes().all(), made.outcomes().runs(), made.entries()));
        terminal.table(List.of(words.get("column.outcome"), words.get("column.strips")), rows(made));
        made.told().forEach(told -> terminal.line(told.sentence(words)));
        terminal.line(words.get("invented"));
    }

    private List<List<String>> rows(Made made) {
        return Arrays.stream(Outcome.values())
                .map(outcome -> List.of(
                        words.get("outcome." + outcome.code()),
                        String.valueOf(made.outcomes().of(outcome))))
                .toList();
    }

    private static Json.Obj json(Made made) {
        return Json.object()
                .with("plant", made.plant().name())
                .with("from", made.span().from().toString())
                .with("until", made.span().until().toString())
                .with("entries", made.entries())
                .with("runs", made.outcomes().runs())
                .with("strips", made.outcomes().json())
                .with("story", Json.array(made.told().stream().map(Told::json).toList()));
    }
}
