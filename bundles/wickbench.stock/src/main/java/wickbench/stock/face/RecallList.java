package wickbench.stock.face;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import wickbench.api.report.Report;
import wickbench.api.report.ReportPrinter;
import wickbench.api.report.Section;
import wickbench.stock.Lot;
import wickbench.stock.Trace;
import wickbench.stock.Use;
import wickbench.stock.room.StockWords;

/** Every result read with a lot, to be looked into: CSV, XLSX, JSON lines or PDF by the file's ending. */
final class RecallList {
    private final ZoneId zone;
    private final List<ReportPrinter> printers;

    RecallList(ZoneId zone, List<ReportPrinter> printers) {
        this.zone = zone;
        this.printers = printers;
    }

    void write(Trace trace, String subject, Path out) {
        PrintedFile.write(out, printers, report(trace, subject));
    }

    private Report report(Trace trace, String subject) {
        Section.Table table = Section.Table.of(
                UseRows.titles(),
                trace.uses().stream().map(new UseRows(zone)::row).toList());
        List<Section.Fact> facts = trace.lot().map(RecallList::facts).orElse(List.of());
        return new Report(
                StockWords.get("recall.title", subject),
                List.of(new Section.Facts(facts), table, new Section.Paragraph(StockWords.get("caution"))),
                trace.uses().stream().map(Use::ref).toList());
    }

    private static List<Section.Fact> facts(Lot lot) {
        return List.of(
                new Section.Fact(StockWords.get("column.kit"), lot.kit().name()),
                new Section.Fact(StockWords.get("column.lot"), lot.id().value()),
                new Section.Fact(
                        StockWords.get("column.state"),
                        StockWords.get("state." + lot.state().code())),
                new Section.Fact(
                        StockWords.get("column.expires"), lot.effective().toString()));
    }
}
