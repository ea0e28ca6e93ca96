package wickbench.stock.room;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Signature;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;
import wickbench.figures.store.Spell;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.LogShape;
import wickbench.stock.LogShape.DateOrder;
import wickbench.stock.LogShape.Degrees;
import wickbench.stock.log.Sketch;

/** Bodies about fridges; each has a schema {@code docs/formats/KIND-1.schema.json}. */
final class FridgeJson {
    static final String REGISTERED = "fridge.registered";
    static final String MAPPED = "fridge.mapped";
    static final String LOGGED = "fridge.logged";
    static final String MEASURED = "fridge.measured";

    /** More are counted, and the longest are told. */
    static final int MOST_EXCURSIONS = 500;

    private FridgeJson() {}

    /**
     * What a log says, as kept.
     *
     * @param leftOut how many excursions more there were; only when it is written
     */
    record Log(
            Instant from,
            Instant to,
            BigDecimal low,
            BigDecimal high,
            long rows,
            List<Excursion> excursions,
            long leftOut,
            List<Spell> spells,
            long widthSeconds,
            List<Sketch.Stretch> stretches) {}

    static Json.Obj registered(Fridge fridge) {
        return Json.object()
                .with("fridge", fridge.id())
                .with("name", fridge.name())
                .with("low", fridge.low())
                .with("high", fridge.high())
                .withText("logger", fridge.logger());
    }

    static Json.Obj mapped(String fridge, LogShape shape) {
        return Json.object()
                .with("fridge", fridge)
                .withText("order", shape.order().map(DateOrder::code))
                .withText("unit", shape.unit().map(Degrees::code))
                .withOptional("time_column", number(shape.timeColumn()))
                .withOptional("clock_column", number(shape.clockColumn()))
                .withOptional("temperature_column", number(shape.temperatureColumn()))
                .withText("zone", shape.zone());
    }

    private static Optional<Json> number(Optional<Integer> value) {
        return value.map(each -> new Json.Num(BigDecimal.valueOf(each)));
    }

    static Json.Obj measured(String fridge, Log log) {
        return Json.object()
                .with("fridge", fridge)
                .with("from", LotEventJson.time(log.from()))
                .with("to", LotEventJson.time(log.to()))
                .with("low", log.low())
                .with("high", log.high())
                .with("excursions", excursions(log.excursions()));
    }

    /** Returns the body of a log but for what names its file. */
    static Json.Obj logged(Json.Obj named, Log log) {
        return named.with("rows", log.rows())
                .with("from", LotEventJson.time(log.from()))
                .with("to", LotEventJson.time(log.to()))
                .with("low", log.low())
                .with("high", log.high())
                .with("excursions", excursions(log.excursions()))
                .with("excursions_in_all", log.excursions().size() + log.leftOut())
                .with(
                        "spells",
                        Json.array(log.spells().stream()
                                .map(spell -> pair(spell.celsius(), spell.hours()))
                                .toList()))
                .with("width_s", log.widthSeconds())
                .with(
                        "trace",
                        Json.array(log.stretches().stream()
                                .map(FridgeJson::stretch)
                                .toList()));
    }

    private static Json.Arr excursions(List<Excursion> all) {
        return Json.array(all.stream()
                .sorted(Comparator.comparing(Excursion::length).reversed())
                .limit(MOST_EXCURSIONS)
                .sorted(Comparator.comparing(Excursion::from).thenComparing(Excursion::cause))
                .map(FridgeJson::excursion)
                .toList());
    }

    static Json.Obj excursion(Excursion each) {
        return Json.object()
                .with("cause", each.cause().code())
                .with("from", LotEventJson.time(each.from()))
                .with("to", LotEventJson.time(each.to()))
                .with("peak", rounded(each.peak()))
                .with("degree_hours", rounded(each.degreeHours()));
    }

    private static Json.Arr pair(double one, double other) {
        return Json.array(List.of(new Json.Num(rounded(one)), new Json.Num(rounded(other))));
    }

    private static Json.Arr stretch(Sketch.Stretch each) {
        return Json.array(List.of(
                new Json.Num(BigDecimal.valueOf(each.place())),
                new Json.Num(rounded(each.low())),
                new Json.Num(rounded(each.high()))));
    }

    /** A logger's digits: ten are more than any has. */
    static BigDecimal rounded(double value) {
        return new BigDecimal(value).round(new MathContext(10, RoundingMode.HALF_UP));
    }

    static Fridge fridge(Events.Said said) {
        Fields fields = fields(said);
        return new Fridge(
                fields.text("fridge"),
                fields.text("name"),
                fields.decimal("low"),
                fields.decimal("high"),
                fields.optionalText("logger"),
                Optional.empty(),
                List.of());
    }

    static LogShape shape(Events.Said said) {
        Fields fields = fields(said);
        return new LogShape(
                fields.optional("order", code -> Coded.of(DateOrder.class, code)),
                fields.optional("unit", code -> Coded.of(Degrees.class, code)),
                fields.optionalWhole("time_column").map(Long::intValue),
                fields.optionalWhole("clock_column").map(Long::intValue),
                fields.optionalWhole("temperature_column").map(Long::intValue),
                fields.optionalText("zone"));
    }

    static Log log(Events.Said said) {
        Fields fields = fields(said);
        boolean file = said.kind().equals(LOGGED);
        return new Log(
                fields.optionalInstant("from").orElseThrow(),
                fields.optionalInstant("to").orElseThrow(),
                fields.decimal("low"),
                fields.decimal("high"),
                file ? fields.whole("rows") : 0,
                fields.children("excursions").stream()
                        .map(FridgeJson::excursion)
                        .toList(),
                0,
                file ? spells(said.body()) : List.of(),
                file ? fields.whole("width_s") : 1,
                file ? stretches(said.body()) : List.of());
    }

    private static Excursion excursion(Fields fields) {
        return new Excursion(
                fields.optional("cause", code -> Coded.of(Cause.class, code)).orElseThrow(),
                fields.optionalInstant("from").orElseThrow(),
                fields.optionalInstant("to").orElseThrow(),
                fields.decimal("peak").doubleValue(),
                fields.decimal("degree_hours").doubleValue());
    }

    private static List<Spell> spells(Json.Obj body) {
        return numbers(body, "spells").stream()
                .map(pair -> new Spell(pair.get(1).doubleValue(), pair.get(0).doubleValue()))
                .toList();
    }

    private static List<Sketch.Stretch> stretches(Json.Obj body) {
        return numbers(body, "trace").stream()
                .map(each -> new Sketch.Stretch(
                        each.get(0).longValueExact(),
                        each.get(1).doubleValue(),
                        each.get(2).doubleValue()))
                .toList();
    }

    private static List<List<BigDecimal>> numbers(Json.Obj body, String name) {
        return body.get(name).map(list -> ((Json.Arr) list).items()).orElse(List.of()).stream()
                .map(item -> ((Json.Arr) item)
                        .items().stream()
                                .map(number -> ((Json.Num) number).value())
                                .toList())
                .toList();
    }

    private static Fields fields(Events.Said said) {
        Fields fields = Fields.of(said.entry().toString(), said.body());
        fields.has(Signature.MEMBER);
        return fields;
    }
}
