package wickbench.stock.face;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.stock.Clash;
import wickbench.stock.Device;
import wickbench.stock.Due;
import wickbench.stock.Excursion;
import wickbench.stock.Happening;
import wickbench.stock.Lot;
import wickbench.stock.LotCheck;
import wickbench.stock.Outlook;
import wickbench.stock.StockTerms;
import wickbench.stock.Use;
import wickbench.stock.room.StockWords;

/** Prints what the stock room knows, for people or for machines. */
final class Print {
    private final Terminal terminal;
    private final ZoneId zone;
    private final LocalDate today;

    Print(Terminal terminal, ZoneId zone, Instant now) {
        this.terminal = terminal;
        this.zone = zone;
        this.today = LocalDate.ofInstant(now, zone);
    }

    void lots(List<Lot> lots) {
        if (terminal.json()) {
            terminal.json(
                    Json.array(lots.stream().map(lot -> LotJson.lot(lot, today)).toList()));
        } else if (lots.isEmpty()) {
            terminal.line(StockWords.get("list.none"));
        } else {
            table(
                    List.of("kit", "lot", "state", "expires", "days", "pouches", "strips", "place"),
                    lots.stream().map(lot -> row(lot, today)).toList());
            terminal.line(StockWords.get("caution"));
        }
    }

    static List<String> row(Lot lot, LocalDate today) {
        return List.of(
                lot.kit().name(),
                lot.id().value(),
                StockTerms.state(lot.state(), lot.expired(today)),
                lot.effective().toString(),
                String.valueOf(lot.daysLeft(today)),
                String.valueOf(lot.sealedPouches()),
                Decimals.of(lot.strips().left()),
                lot.place().orElse(""));
    }

    void lot(Lot lot, List<Happening> history, List<EntryRef> clashing) {
        if (terminal.json()) {
            terminal.json(LotJson.lot(lot, today)
                    .with(
                            "clashing",
                            Json.texts(clashing.stream().map(EntryRef::toString).toList()))
                    .with(
                            "history",
                            Json.array(history.stream().map(LotJson::happening).toList())));
            return;
        }
        lots(List.of(lot));
        lot.parts()
                .forEach(part -> terminal.line(StockWords.get(
                        "show.part",
                        part.part().name(),
                        Decimals.of(part.left()),
                        part.part().unit(),
                        Decimals.of(part.missing()))));
        lot.quarantines()
                .forEach(each -> terminal.line(StockWords.get(
                        "show.quarantine", minute(each.at()), StockTerms.cause(each.cause()), each.reason())));
        if (!clashing.isEmpty()) {
            terminal.line(StockWords.get(
                    "show.clashing",
                    clashing.stream().map(EntryRef::toString).collect(Collectors.joining(", ")),
                    Clash.subject(lot.id())));
        }
        lot.clashes().forEach(each -> terminal.line(StockWords.get("show.clash", StockTerms.clash(each))));
        table(
                List.of("when", "what", "who", "facts", "entry"),
                history.stream().map(this::row).toList());
    }

    private List<String> row(Happening each) {
        String facts = each.facts().entrySet().stream()
                .map(fact -> fact.getKey() + " " + fact.getValue())
                .collect(Collectors.joining(", "));
        return List.of(
                minute(each.at()),
                StockTerms.act(each.entry().kind()),
                each.entry().by().value(),
                facts,
                each.entry().ref().toString());
    }

    void check(Lot lot, LotCheck check) {
        if (terminal.json()) {
            terminal.json(LotJson.check(lot.id(), check));
        } else {
            terminal.line(StockWords.get(
                    check.passed() ? "check.passed" : "check.failed",
                    lot.id(),
                    check.blanks(),
                    check.lowPositives(),
                    check.wrong(),
                    check.invalid()));
        }
    }

    void due(List<Due> due) {
        if (terminal.json()) {
            terminal.json(Json.array(due.stream()
                    .map(each -> Json.object()
                            .with("what", each.what().code())
                            .with("day", each.day().toString())
                            .with("subject", each.subject())
                            .with("about", each.about())
                            .with("fact", each.fact()))
                    .toList()));
        } else if (due.isEmpty()) {
            terminal.line(StockWords.get("due.none"));
        } else {
            table(
                    List.of("day", "subject", "what"),
                    due.stream()
                            .map(each -> List.of(each.day().toString(), each.subject(), StockTerms.due(each)))
                            .toList());
        }
    }

    void uses(List<Use> uses) {
        if (terminal.json()) {
            terminal.json(Json.array(uses.stream().map(LotJson::use).toList()));
        } else if (uses.isEmpty()) {
            terminal.line(StockWords.get("trace.none"));
        } else {
            table(UseRows.columns(), uses.stream().map(new UseRows(zone)::row).toList());
            terminal.line(StockWords.get("caution"));
        }
    }

    void outlooks(List<Outlook> outlooks) {
        if (terminal.json()) {
            terminal.json(Json.array(outlooks.stream().map(LotJson::outlook).toList()));
            return;
        }
        table(
                List.of("kit", "strips", "demand", "point", "runs-out", "order-by", "boxes", "unused"),
                outlooks.stream().map(Print::row).toList());
        terminal.line(StockWords.get("outlook.how"));
    }

    static List<String> row(Outlook outlook) {
        return List.of(
                outlook.kit(),
                String.valueOf(outlook.strips()),
                Decimals.of(outlook.demand(), 1),
                Decimals.of(Math.ceil(outlook.point()), 0),
                outlook.runsOut().map(LocalDate::toString).orElse(""),
                outlook.orderBy().map(LocalDate::toString).orElse(""),
                String.valueOf(outlook.boxes()),
                String.valueOf(outlook.waste().stream()
                        .mapToLong(Outlook.Waste::strips)
                        .sum()));
    }

    void devices(List<Device> devices) {
        if (terminal.json()) {
            terminal.json(Json.array(devices.stream().map(this::json).toList()));
        } else {
            table(
                    List.of("device", "type", "name", "calibrated", "due", "state"),
                    devices.stream()
                            .map(each -> List.of(
                                    each.id(),
                                    StockTerms.type(each.type()),
                                    each.name(),
                                    each.calibrated().toString(),
                                    each.due().toString(),
                                    StockTerms.standing(each, today)))
                            .toList());
        }
    }

    private Json.Obj json(Device device) {
        return Json.object()
                .with("device", device.id())
                .with("type", device.type().code())
                .with("name", device.name())
                .with("calibrated", device.calibrated().toString())
                .with("due", device.due().toString())
                .with("overdue", device.overdue(today))
                .with("retired", device.retired().isPresent());
    }

    void excursions(List<Excursion> found) {
        if (!found.isEmpty()) {
            table(
                    List.of("cause", "from", "to", "length", "peak", "degree-hours"),
                    found.stream().map(this::row).toList());
        }
    }

    private List<String> row(Excursion each) {
        boolean silent = each.cause() == wickbench.stock.Cause.GAP;
        return List.of(
                StockTerms.cause(each.cause()),
                minute(each.from()),
                minute(each.to()),
                each.length().toHours() + " h " + each.length().toMinutesPart() + " min",
                silent ? "" : Decimals.of(each.peak(), 1) + " °C",
                silent ? "" : Decimals.of(each.degreeHours(), 1));
    }

    private void table(List<String> columns, List<List<String>> rows) {
        terminal.table(
                columns.stream()
                        .map(column -> StockWords.get("column." + column))
                        .toList(),
                rows);
    }

    String minute(Instant at) {
        return new UseRows(zone).minute(at);
    }
}
