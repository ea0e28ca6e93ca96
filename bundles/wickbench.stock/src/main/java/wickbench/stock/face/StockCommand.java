package wickbench.stock.face;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickbench.api.command.Hands;
import wickbench.api.command.Terminal;
import wickbench.api.lot.LotId;
import wickbench.api.report.ReportPrinter;
import wickbench.api.words.Coded;
import wickbench.stock.Count;
import wickbench.stock.Device;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.Trace;
import wickbench.stock.gs1.ElementStrings;
import wickbench.stock.gs1.Scan;
import wickbench.stock.room.StockWords;

/** {@code stock}: everything that is done in the stock room. */
@Command(name = "stock", synopsisSubcommandLabel = "COMMAND")
final class StockCommand {
    private static final int DUE_DAYS = 14;

    private final Doors doors;
    private final InstantSource clock;
    private final Hands hands;
    private final Optional<CheckSheet> sheet;
    private final List<ReportPrinter> printers;
    private final Terminal terminal;

    StockCommand(
            Doors doors,
            InstantSource clock,
            Hands hands,
            Optional<CheckSheet> sheet,
            List<ReportPrinter> printers,
            Terminal terminal) {
        this.doors = doors;
        this.clock = clock;
        this.hands = hands;
        this.sheet = sheet;
        this.printers = printers;
        this.terminal = terminal;
    }

    @Command(name = "define")
    int define(
            @Parameters(paramLabel = "FILE.json", arity = "1..*") List<Path> files,
            @Option(names = "--sign") boolean sign) {
        return new KitFiles(doors, terminal).define(files, hands.actor(sign));
    }

    @Command(name = "kits")
    int kits() {
        return new KitFiles(doors, terminal).list();
    }

    @Command(name = "scan")
    int scan(@Parameters(paramLabel = "TEXT") String text) {
        int year = LocalDate.ofInstant(now(), doors.room().zone()).getYear();
        Scan scan = ElementStrings.parse(text, year);
        terminal.json(ScanJson.of(scan, year));
        return scan instanceof Scan.Read ? 0 : 1;
    }

    @Command(name = "receive")
    int receive(
            @Option(names = "--scan", paramLabel = "TEXT") String scan,
            @Option(names = "--kit", paramLabel = "NAME") String kit,
            @Option(names = "--lot", paramLabel = "LOT") String lot,
            @Option(names = "--expiry", paramLabel = "DATE") String expiry,
            @Option(names = "--boxes", paramLabel = "N") Integer boxes,
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--insert", paramLabel = "REVISION") String insert,
            @Option(names = "--fridge", paramLabel = "ID") String fridge,
            @Option(names = "--companion", paramLabel = "PART=LOT[@DATE]") List<String> companions,
            @Option(names = "--sign") boolean sign) {
        Box typed = new Box(scan, kit, lot, expiry, boxes, at, insert, fridge, list(companions));
        Lot received = doors.keeping().receive(typed.delivery(doors.room(), now()), hands.actor(sign));
        if (received.otherInsert()) {
            terminal.note(StockWords.get(
                    "receive.other-insert", received.insert().orElse(""), String.join(", ", received.inserts())));
        }
        if (received.waived()) {
            terminal.note(StockWords.get("receive.waived"));
        }
        return shown(received);
    }

    @Command(name = "list")
    int list(@Option(names = "--all") boolean all, @Option(names = "--kit", paramLabel = "NAME") String kit) {
        print().lots(doors.room().lots(now()).stream()
                .filter(lot -> all || lot.state().kept())
                .filter(lot -> kit == null || lot.kit().name().equals(kit))
                .toList());
        return 0;
    }

    @Command(name = "show")
    int show(@Parameters(paramLabel = "LOT") String lot) {
        return shown(known(lot));
    }

    @Command(name = "due")
    int due(@Option(names = "--within", paramLabel = "DAYS") Integer within) {
        print().due(doors.room().due(now(), within == null ? DUE_DAYS : within));
        return 0;
    }

    @Command(name = "check")
    int check(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--sheet", paramLabel = "FILE.csv") Path file,
            @Option(names = "--waive") boolean waive,
            @Option(names = "--reason", paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        LotId id = known(lot).id();
        if (waive) {
            return shown(doors.keeping().waive(id, needed(reason), hands.actor(sign)));
        }
        if (file != null) {
            sheet.orElseThrow(() -> Typed.wrong("--sheet", "check.no-bench"))
                    .record(file, id, terminal.actorOrRefuse());
        }
        LotCheck check = doors.keeping().check(id, hands.actor(sign));
        print().check(known(lot), check);
        return check.passed() ? 0 : 1;
    }

    @Command(name = "reject")
    int reject(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--since", paramLabel = "TIME") String since,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        Optional<Instant> from = Optional.ofNullable(since).map(text -> time("--since", text));
        Lot rejected = doors.keeping().reject(known(lot).id(), from, reason, hands.actor(sign));
        Instant touched = from.orElse(rejected.received());
        terminal.note(StockWords.get(
                "reject.touched",
                doors.room().trace(rejected.id()).uses().stream()
                        .filter(use -> !use.taken().isBefore(touched))
                        .count()));
        return shown(rejected);
    }

    @Command(name = "open")
    int open(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--with", paramLabel = "PART=LOT") List<String> with,
            @Option(names = "--sign") boolean sign) {
        return shown(doors.keeping().open(known(lot).id(), at("--at", at), Typed.lots(list(with)), hands.actor(sign)));
    }

    @Command(name = "take")
    int take(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--part", paramLabel = "NAME") String part,
            @Option(names = "--amount", required = true, paramLabel = "N") BigDecimal amount,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        Lot from = known(lot);
        String what = part == null ? from.kit().strip().name() : part;
        return shown(doors.keeping().take(from.id(), what, amount, reason, hands.actor(sign)));
    }

    @Command(name = "count")
    int count(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--pouches", required = true, paramLabel = "N") int pouches,
            @Option(names = "--loose", required = true, paramLabel = "N") int loose,
            @Option(names = "--part", paramLabel = "NAME=AMOUNT") List<String> parts,
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--reason", paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        Count count = new Count(
                known(lot).id(),
                at("--at", at),
                pouches,
                loose,
                Typed.amounts(list(parts)),
                Optional.ofNullable(reason));
        return shown(doors.keeping().count(count, hands.actor(sign)));
    }

    @Command(name = "place")
    int place(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--fridge", required = true, paramLabel = "ID") String fridge,
            @Option(names = "--at", paramLabel = "TIME") String at,
            @Option(names = "--sign") boolean sign) {
        return shown(doors.keeping().place(known(lot).id(), fridge, at("--at", at), hands.actor(sign)));
    }

    @Command(name = "quarantine")
    int quarantine(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        return shown(doors.keeping().quarantine(known(lot).id(), reason, hands.actor(sign)));
    }

    @Command(name = "release")
    int release(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--until", paramLabel = "DATE") String until,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason) {
        Optional<LocalDate> day = Optional.ofNullable(until).map(text -> Typed.date("--until", text));
        return shown(doors.keeping().release(known(lot).id(), day, reason, hands.signer()));
    }

    @Command(name = "used-up")
    int usedUp(@Parameters(paramLabel = "LOT") String lot, @Option(names = "--sign") boolean sign) {
        return shown(doors.keeping().usedUp(known(lot).id(), hands.actor(sign)));
    }

    @Command(name = "destroy")
    int destroy(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        return shown(doors.keeping().destroy(known(lot).id(), reason, hands.actor(sign)));
    }

    @Command(name = "trace")
    int trace(
            @Parameters(paramLabel = "LOT", arity = "0..1") String lot,
            @Option(names = "--result", paramLabel = "ID") String result,
            @Option(names = "--out", paramLabel = "FILE") Path out) {
        Trace trace = result == null ? doors.room().trace(Typed.lot(needed(lot))) : behind(result);
        if (out != null) {
            new RecallList(doors.room().zone(), printers).write(trace, result == null ? lot : result, out);
            terminal.note(StockWords.get("file.written", out));
        } else {
            print().uses(trace.uses());
        }
        return 0;
    }

    private Trace behind(String result) {
        return doors.room()
                .behind(Typed.result(result))
                .orElseThrow(() -> Typed.wrong("--result", "trace.unknown", result));
    }

    @Command(name = "label")
    int label(
            @Parameters(paramLabel = "LOT") String lot,
            @Option(names = "--on", paramLabel = "pouch|tube") String on,
            @Option(names = "--count", paramLabel = "N") Integer count,
            @Option(names = "--pdf", required = true, paramLabel = "FILE.pdf") Path out) {
        LotLabels.On what =
                on == null ? LotLabels.On.POUCH : Typed.of("--on", on, code -> Coded.of(LotLabels.On.class, code));
        LocalDate today = LocalDate.ofInstant(now(), doors.room().zone());
        int many = new LotLabels(printers, today).write(known(lot), what, Optional.ofNullable(count), out);
        terminal.note(StockWords.get("label.written", many, out));
        return 0;
    }

    @Command(name = "report")
    int report(@Option(names = "--out", required = true, paramLabel = "FILE") Path out) {
        doors.papers().report(now(), out);
        terminal.note(StockWords.get("file.written", out));
        return 0;
    }

    @Command(name = "outlook")
    int outlook() {
        print().outlooks(doors.room().outlook(now()));
        return 0;
    }

    @Command(name = "devices")
    int devices() {
        print().devices(doors.room().equipment());
        return 0;
    }

    @Command(name = "device")
    int device(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--type", required = true, paramLabel = "TYPE") String type,
            @Option(names = "--name", required = true, paramLabel = "TEXT") String name,
            @Option(names = "--calibrated", required = true, paramLabel = "DATE") String calibrated,
            @Option(names = "--due", required = true, paramLabel = "DATE") String due,
            @Option(names = "--certificate", paramLabel = "TEXT") String certificate,
            @Option(names = "--sign") boolean sign) {
        Device device = new Device(
                id,
                Typed.of("--type", type, code -> Coded.of(Device.Type.class, code)),
                name,
                Typed.date("--calibrated", calibrated),
                Typed.date("--due", due),
                Optional.ofNullable(certificate),
                Optional.empty());
        print().devices(List.of(doors.keeping().calibrated(device, hands.actor(sign))));
        return 0;
    }

    @Command(name = "retire")
    int retire(
            @Parameters(paramLabel = "ID") String id,
            @Option(names = "--reason", required = true, paramLabel = "TEXT") String reason,
            @Option(names = "--sign") boolean sign) {
        print().devices(List.of(doors.keeping().retire(id, reason, hands.actor(sign))));
        return 0;
    }

    private int shown(Lot lot) {
        print().lot(lot, doors.room().history(lot.id()), doors.room().clashing(lot.id()));
        return 0;
    }

    private Lot known(String text) {
        LotId id = Typed.lot(text);
        return doors.room().lot(id, now()).orElseThrow(() -> Typed.wrong("LOT", "lot.unknown", id));
    }

    private Instant at(String field, String text) {
        return text == null ? now() : time(field, text);
    }

    private Instant time(String field, String text) {
        return Typed.time(field, text, doors.room().zone());
    }

    private Instant now() {
        return clock.instant();
    }

    private Print print() {
        return new Print(terminal, doors.room().zone(), now());
    }

    private static List<String> list(List<String> given) {
        return given == null ? List.of() : new ArrayList<>(given);
    }

    private static String needed(String text) {
        if (text == null) {
            throw Typed.wrong("--reason", "reason.blank");
        }
        return text;
    }
}
