package wickbench.stock.face;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.report.Report;
import wickbench.api.report.Section;
import wickbench.api.report.Section.Column;
import wickbench.api.words.Decimals;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.FridgeTrace.Point;
import wickbench.stock.FridgeTrace.Source;
import wickbench.stock.Fridges.Imported;
import wickbench.stock.room.StockWords;

/** What fridges did, as a report, as lines and for machines. */
final class FridgeReport {
    private final ZoneId zone;

    FridgeReport(ZoneId zone) {
        this.zone = zone;
    }

    Report of(List<FridgeTrace> traces) {
        List<Section> sections = new ArrayList<>();
        for (FridgeTrace trace : traces) {
            sections.add(new Section.Heading(
                    trace.fridge().id() + " – " + trace.fridge().name()));
            sections.add(new Section.Paragraph(String.join("\n", lines(trace))));
            sections.add(new Section.Figure(chart(trace)));
            sections.add(table(trace));
        }
        sections.add(new Section.Paragraph(StockWords.get("fridge.caution")));
        return new Report(
                StockWords.get("fridge.title"),
                sections,
                traces.stream()
                        .flatMap(trace -> trace.sources().stream())
                        .map(Source::entry)
                        .toList());
    }

    private Chart chart(FridgeTrace trace) {
        Fridge fridge = trace.fridge();
        return new Chart(
                fridge.name(),
                Axis.time(StockWords.get("column.when"), zone),
                Axis.linear(StockWords.get("fridge.temperature"), "°C"),
                List.of(series("fridge.highest", trace.points(), false), series("fridge.lowest", trace.points(), true)),
                List.of(
                        new Chart.Limit(
                                StockWords.get("fridge.low"), fridge.low().doubleValue()),
                        new Chart.Limit(
                                StockWords.get("fridge.high"), fridge.high().doubleValue())),
                List.of(new Chart.Band(fridge.low().doubleValue(), fridge.high().doubleValue())));
    }

    /** A stretch without a reading leaves a gap in the line. */
    private static Series series(String name, List<Point> points, boolean low) {
        List<double[]> drawn = new ArrayList<>();
        Optional<Instant> expected = Optional.empty();
        for (Point point : points) {
            if (expected.filter(point.from()::isAfter).isPresent()) {
                drawn.add(new double[] {expected.get().toEpochMilli(), Double.NaN});
            }
            drawn.add(new double[] {point.from().toEpochMilli(), low ? point.low() : point.high()});
            expected = Optional.of(point.from().plus(point.width()));
        }
        return new Series(
                StockWords.get(name),
                Series.Mark.LINE,
                drawn.stream().mapToDouble(each -> each[0]).toArray(),
                drawn.stream().mapToDouble(each -> each[1]).toArray());
    }

    private Section table(FridgeTrace trace) {
        return new Section.Table(
                List.of(text("cause"), text("from"), text("to"), figure("peak"), figure("degree-hours")),
                trace.excursions().stream().map(this::row).toList());
    }

    private static Column text(String id) {
        return Column.text(StockWords.get("column." + id));
    }

    private static Column figure(String id) {
        return Column.number(StockWords.get("column." + id));
    }

    private List<String> row(Excursion each) {
        return List.of(
                StockWords.get("cause." + each.cause().code()),
                each.from().atZone(zone).toOffsetDateTime().toString(),
                each.to().atZone(zone).toOffsetDateTime().toString(),
                number(each.peak()),
                number(each.degreeHours()));
    }

    List<String> lines(FridgeTrace trace) {
        UseRows times = new UseRows(zone);
        List<String> lines = new ArrayList<>();
        lines.add(StockWords.get(
                "fridge.head",
                trace.fridge().id(),
                range(trace.fridge()),
                trace.readings(),
                times.minute(trace.from()),
                times.minute(trace.to())));
        if (!trace.sources().isEmpty()) {
            lines.add(StockWords.get(
                    "fridge.sources",
                    trace.sources().stream()
                            .map(source -> source.entry().toString())
                            .collect(Collectors.joining(", "))));
        }
        trace.kinetic()
                .ifPresent(kinetic -> lines.add(StockWords.get(
                        "fridge.figures",
                        number(trace.lowest().orElseThrow()),
                        number(trace.highest().orElseThrow()),
                        number(trace.mean().orElseThrow()),
                        number(kinetic))));
        return lines;
    }

    private static String number(double value) {
        return Decimals.of(value, 2);
    }

    static String range(Fridge fridge) {
        return Decimals.of(fridge.low()) + " – " + Decimals.of(fridge.high()) + " °C";
    }

    static Json.Obj json(Fridge fridge) {
        return Json.object()
                .with("fridge", fridge.id())
                .with("name", fridge.name())
                .with("low", fridge.low())
                .with("high", fridge.high())
                .withText("logger", fridge.logger())
                .withText("until", fridge.until().map(Instant::toString))
                .with("lots", Json.texts(fridge.lots()));
    }

    static Json.Obj json(FridgeTrace trace) {
        return json(trace.fridge())
                .with("from", trace.from().toString())
                .with("to", trace.to().toString())
                .with("readings", trace.readings())
                .withOptional("lowest", trace.lowest().map(FridgeReport::rounded))
                .withOptional("highest", trace.highest().map(FridgeReport::rounded))
                .withOptional("mean", trace.mean().map(FridgeReport::rounded))
                .withOptional("mean_kinetic", trace.kinetic().map(FridgeReport::rounded))
                .with("excursions", excursions(trace.excursions()))
                .with(
                        "sources",
                        Json.array(trace.sources().stream()
                                .map(FridgeReport::source)
                                .toList()));
    }

    private static Json.Obj source(Source source) {
        return Json.object()
                .with("entry", source.entry().toString())
                .with("from", source.from().toString())
                .with("to", source.to().toString())
                .with("readings", source.readings());
    }

    static Json.Obj json(Imported done) {
        return Json.object()
                .with("added", done.added())
                .withText("entry", done.entry().map(Object::toString))
                .with("attached", done.unattached().isEmpty())
                .with("rows", done.rows())
                .with("from", done.from().toString())
                .with("to", done.to().toString())
                .with("excursions", excursions(done.found()))
                .with(
                        "quarantined",
                        Json.texts(done.quarantined().stream().map(LotId::value).toList()));
    }

    private static Json.Arr excursions(List<Excursion> all) {
        return Json.array(all.stream().map(LotJson::excursion).toList());
    }

    private static Json rounded(double value) {
        return new Json.Num(LotJson.rounded(value));
    }
}
