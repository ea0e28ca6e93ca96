package wickbench.stock.face;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Column;
import wickbench.stock.Device;
import wickbench.stock.Due;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.Fridges;
import wickbench.stock.Lot;
import wickbench.stock.Outlook;
import wickbench.stock.StockTerms;
import wickbench.stock.Stockroom;
import wickbench.stock.room.StockWords;

/** How the stock room stands, on paper: what is due, the lots, how far they go, the fridges, the equipment. */
final class StockReport {
    /** What is due within so many days is named. */
    private static final int DUE_DAYS = 14;

    /** So far back a fridge is told of. */
    private static final int FRIDGE_DAYS = 30;

    private final Stockroom room;
    private final Fridges fridges;
    private final Instant now;
    private final LocalDate today;

    StockReport(Stockroom room, Fridges fridges, Instant now) {
        this.room = room;
        this.fridges = fridges;
        this.now = now;
        this.today = LocalDate.ofInstant(now, room.zone());
    }

    Report report() {
        List<Section> sections = new ArrayList<>();
        List<Lot> lots = room.lots(now);
        add(sections, "report.due", due(room.due(now, DUE_DAYS)));
        add(
                sections,
                "report.lots",
                lots(lots.stream().filter(lot -> lot.state().kept()).toList()));
        add(sections, "report.outlook", outlooks(room.outlook(now)));
        sections.add(new Section.Paragraph(StockTerms.outlookHow()));
        add(sections, "report.fridges", fridges());
        sections.add(new Section.Paragraph(StockTerms.kineticCaution()));
        add(sections, "report.equipment", devices(room.equipment()));
        sections.add(new Section.Paragraph(StockTerms.caution()));
        return new Report(
                StockWords.get("report.title", today),
                sections,
                lots.stream()
                        .map(lot -> room.history(lot.id()))
                        .filter(history -> !history.isEmpty())
                        .map(history -> history.get(history.size() - 1).entry().ref())
                        .toList());
    }

    private static void add(List<Section> sections, String heading, Section.Table table) {
        sections.add(new Section.Heading(StockWords.get(heading)));
        if (table.rows().iterator().hasNext()) {
            sections.add(table);
        } else {
            sections.add(new Section.Paragraph(StockWords.get("report.none")));
        }
    }

    private static Section.Table due(List<Due> due) {
        return new Section.Table(
                List.of(text("day"), text("subject"), text("what")),
                due.stream()
                        .map(each -> List.of(each.day().toString(), each.subject(), StockTerms.due(each)))
                        .toList());
    }

    private Section.Table lots(List<Lot> lots) {
        return new Section.Table(
                List.of(
                        text("kit"),
                        text("lot"),
                        text("state"),
                        text("expires"),
                        number("days"),
                        number("pouches"),
                        number("strips"),
                        text("place")),
                lots.stream().map(lot -> Print.row(lot, today)).toList());
    }

    private static Section.Table outlooks(List<Outlook> outlooks) {
        return new Section.Table(
                List.of(
                        text("kit"),
                        number("strips"),
                        number("demand"),
                        number("point"),
                        text("runs-out"),
                        text("order-by"),
                        number("boxes"),
                        number("unused")),
                outlooks.stream().map(Print::row).toList());
    }

    private Section.Table fridges() {
        return new Section.Table(
                List.of(text("fridge"), text("name"), text("range"), text("until"), number("excursions"), text("lots")),
                fridges.all().stream().map(this::row).toList());
    }

    private List<String> row(Fridge fridge) {
        FridgeTrace trace = fridges.trace(fridge.id(), now.minus(Duration.ofDays(FRIDGE_DAYS)), now);
        return List.of(
                fridge.id(),
                fridge.name(),
                FridgeReport.range(fridge),
                fridge.until().map(new UseRows(room.zone())::minute).orElse(""),
                String.format(Locale.ROOT, "%d", trace.excursions().size()),
                fridge.lots().stream().collect(Collectors.joining(", ")));
    }

    private Section.Table devices(List<Device> devices) {
        return new Section.Table(
                List.of(text("device"), text("type"), text("name"), text("calibrated"), text("due"), text("state")),
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

    private static Column text(String column) {
        return Column.text(StockWords.get("column." + column));
    }

    private static Column number(String column) {
        return Column.number(StockWords.get("column." + column));
    }
}
