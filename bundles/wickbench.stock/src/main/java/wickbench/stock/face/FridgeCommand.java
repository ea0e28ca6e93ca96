package wickbench.stock.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.report.ReportPrinter;
import wickbench.api.words.Coded;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges;
import wickbench.stock.Fridges.Imported;
import wickbench.stock.LogShape;
import wickbench.stock.Stockroom;
import wickbench.stock.room.StockWords;

/** {@code fridge}: register, take logger files in, report. */
@Command(name = "fridge", synopsisSubcommandLabel = "COMMAND")
final class FridgeCommand {
    /** So many excursions of a file are told; the report tells all. */
    private static final int TOLD = 5;

    private final Fridges fridges;
    private final Stockroom room;
    private final InstantSource clock;
    private final Hands hands;
    private final List<ReportPrinter> printers;
    private final Terminal terminal;

    FridgeCommand(
            Fridges fridges,
            Stockroom room,
            InstantSource clock,
            Hands hands,
            List<ReportPrinter> printers,
            Terminal terminal) {
        this.fridges = fridges;
        this.room = room;
        this.clock = clock;
        this.hands = hands;
        this.printers = printers;
        this.terminal = terminal;
    }

    @Command(name = "add")
    int add(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--name", required = true, paramLabel = "TEXT") String name,
            @Option(names = "--low", required = true, paramLabel = "C") BigDecimal low,
            @Option(names = "--high", required = true, paramLabel = "C") BigDecimal high,
            @Option(names = "--logger", paramLabel = "DEVICE") String logger,
            @Option(names = "--sign") boolean sign) {
        Fridge fridge = new Fridge(id, name, low, high, Optional.ofNullable(logger), Optional.empty(), List.of());
        show(List.of(fridges.register(fridge, hands.actor(sign))));
        return 0;
    }

    @Command(name = "list")
    int list() {
        show(fridges.all());
        return 0;
    }

    @Command(name = "import")
    int read(
            @Parameters(paramLabel = "FILE") Path file,
            @Option(names = "--fridge", required = true, paramLabel = "ID") String fridge,
            @Option(names = "--date-order", paramLabel = "ORDER") String order,
            @Option(names = "--unit", paramLabel = "UNIT") String unit,
            @Option(names = "--time-column", paramLabel = "N") Integer time,
            @Option(names = "--clock-column", paramLabel = "N") Integer clockColumn,
            @Option(names = "--temperature-column", paramLabel = "N") Integer temperature,
            @Option(names = "--zone", paramLabel = "ZONE") String zone,
            @Option(names = "--sign") boolean sign) {
        LogShape said = new LogShape(
                Optional.ofNullable(order)
                        .map(code -> Typed.of("--date-order", code, each -> Coded.of(LogShape.DateOrder.class, each))),
                Optional.ofNullable(unit)
                        .map(code -> Typed.of("--unit", code, each -> Coded.of(LogShape.Degrees.class, each))),
                Optional.ofNullable(time),
                Optional.ofNullable(clockColumn),
                Optional.ofNullable(temperature),
                Optional.ofNullable(zone));
        return print(fridges.read(
                file, fridge, said, terminal.progress(StockWords.get("fridge.progress")), hands.actor(sign)));
    }

    @Command(name = "measured")
    int measured(
            @Option(names = "--fridge", required = true, paramLabel = "ID") String fridge,
            @Option(names = "--from", required = true, paramLabel = "TIME") String from,
            @Option(names = "--to", paramLabel = "TIME") String to,
            @Option(names = "--low", required = true, paramLabel = "C") BigDecimal low,
            @Option(names = "--high", required = true, paramLabel = "C") BigDecimal high,
            @Option(names = "--sign") boolean sign) {
        Instant end = to == null ? clock.instant() : time("--to", to);
        return print(fridges.measured(fridge, time("--from", from), end, low, high, hands.actor(sign)));
    }

    @Command(name = "report")
    int report(
            @Option(names = "--fridge", paramLabel = "ID") String fridge,
            @Option(names = "--from", paramLabel = "TIME") String from,
            @Option(names = "--to", paramLabel = "TIME") String to,
            @Option(names = "--out", paramLabel = "FILE") Path out) {
        Instant end = to == null ? clock.instant() : time("--to", to);
        Optional<Instant> start = Optional.ofNullable(from).map(text -> time("--from", text));
        List<FridgeTrace> traces = fridges.all().stream()
                .map(Fridge::id)
                .filter(id -> fridge == null || id.equals(fridge))
                .map(id -> fridges.trace(id, start.orElseGet(() -> first(id, end)), end))
                .toList();
        if (fridge != null && traces.isEmpty()) {
            throw Typed.wrong("--fridge", "fridge.unknown", fridge);
        }
        if (out != null) {
            PrintedFile.write(out, printers, new FridgeReport(room.zone()).of(traces));
            terminal.note(StockWords.get("file.written", out));
        } else if (terminal.json()) {
            terminal.json(Json.array(traces.stream().map(FridgeReport::json).toList()));
        } else {
            traces.forEach(this::print);
            terminal.line(StockWords.get("fridge.caution"));
        }
        return 0;
    }

    /** The report begins with the first reading, however long ago that was. */
    private Instant first(String fridge, Instant end) {
        return fridges.trace(fridge, Instant.EPOCH, end).sources().stream()
                .map(FridgeTrace.Source::from)
                .min(Comparator.naturalOrder())
                .orElse(end);
    }

    private void print(FridgeTrace trace) {
        new FridgeReport(room.zone()).lines(trace).forEach(terminal::line);
        lines().excursions(trace.excursions());
    }

    private int print(Imported done) {
        if (!done.complete()) {
            terminal.note(StockWords.get("fridge.stopped"));
            return 1;
        }
        done.unattached().ifPresent(why -> terminal.note(StockWords.get("fridge.unattached", why)));
        if (terminal.json()) {
            terminal.json(FridgeReport.json(done));
            return 0;
        }
        terminal.line(StockWords.get(
                done.added() ? "fridge.taken-in" : "fridge.known",
                done.rows(),
                lines().minute(done.from()),
                lines().minute(done.to())));
        outside(done.found());
        done.quarantined().forEach(lot -> terminal.line(StockWords.get("fridge.quarantined", lot)));
        return 0;
    }

    /** A file of a year has hundreds: how many, and what came last. */
    private void outside(List<Excursion> found) {
        if (found.isEmpty()) {
            terminal.line(StockWords.get("fridge.calm"));
            return;
        }
        List<Excursion> last = found.subList(Math.max(0, found.size() - TOLD), found.size());
        terminal.line(StockWords.get(
                last.size() == found.size() ? "fridge.outside" : "fridge.outside-last", found.size(), last.size()));
        lines().excursions(last);
    }

    private void show(List<Fridge> shown) {
        if (terminal.json()) {
            terminal.json(Json.array(shown.stream().map(FridgeReport::json).toList()));
        } else {
            terminal.table(
                    List.of("fridge", "name", "range", "until", "lots").stream()
                            .map(column -> StockWords.get("column." + column))
                            .toList(),
                    shown.stream().map(this::row).toList());
        }
    }

    private List<String> row(Fridge fridge) {
        return List.of(
                fridge.id(),
                fridge.name(),
                FridgeReport.range(fridge),
                fridge.until().map(lines()::minute).orElse(""),
                String.join(", ", fridge.lots()));
    }

    private Instant time(String field, String text) {
        return Typed.time(field, text, room.zone());
    }

    private Print lines() {
        return new Print(terminal, room.zone(), clock.instant());
    }
}
