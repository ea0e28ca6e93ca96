package wickbench.figures.sums;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/** Writes and reads the body of a kept sum. */
final class KeptJson {
    private KeptJson() {}

    static Json.Obj write(KeptSum kept) {
        Json.Obj inputs = Json.object();
        for (Map.Entry<String, String> input : new TreeMap<>(kept.given().texts()).entrySet()) {
            inputs = inputs.with(input.getKey(), input.getValue());
        }
        Json.Obj tables = Json.object();
        for (Map.Entry<String, TableText> table : new TreeMap<>(kept.given().tables()).entrySet()) {
            tables = tables.with(table.getKey(), table(table.getValue()));
        }
        return Json.object()
                .with("sum", kept.sum())
                .with("version", kept.version())
                .with("inputs", inputs)
                .with("tables", tables)
                .with("figures", kept.figures())
                .withText("about", kept.about());
    }

    private static Json.Obj table(TableText table) {
        return Json.object()
                .with("source", table.source())
                .with("decimal_comma", table.decimalComma())
                .with(
                        "rows",
                        Json.array(
                                KeptSum.cells(table).stream().map(Json::texts).toList()));
    }

    static Checked<KeptSum> read(String source, Json.Obj body) {
        Fields fields = Fields.of(source, body);
        String sum = fields.text("sum");
        long version = fields.whole("version");
        Map<String, String> texts = new LinkedHashMap<>();
        Map<String, TableText> tables = new LinkedHashMap<>();
        object(fields, body, "inputs").members().forEach((name, value) -> {
            if (value instanceof Json.Text text) {
                texts.put(name, text.value());
            } else {
                fields.complain("inputs." + name, "expected a text");
            }
        });
        object(fields, body, "tables")
                .members()
                .forEach((name, value) -> table(value)
                        .ifPresentOrElse(
                                table -> tables.put(name, table),
                                () -> fields.complain("tables." + name, "expected source, decimal_comma and rows")));
        Json.Obj figures = object(fields, body, "figures");
        Optional<String> about = fields.optional("about", text -> text);
        return fields.finish(() -> new KeptSum(sum, (int) version, new Given(texts, tables), figures, about));
    }

    private static Json.Obj object(Fields fields, Json.Obj body, String name) {
        if (fields.has(name) && body.get(name).orElse(Json.Null.NULL) instanceof Json.Obj object) {
            return object;
        }
        fields.complain(name, "expected an object");
        return Json.object();
    }

    private static Optional<TableText> table(Json value) {
        return value instanceof Json.Obj object
                        && object.get("source").orElse(Json.Null.NULL) instanceof Json.Text source
                        && object.get("decimal_comma").orElse(Json.Null.NULL) instanceof Json.Bool comma
                        && object.get("rows").orElse(Json.Null.NULL) instanceof Json.Arr rows
                        && rows.items().stream().allMatch(KeptJson::isRow)
                ? Optional.of(new TableText(source.value(), lines(rows), comma.value()))
                : Optional.empty();
    }

    private static boolean isRow(Json value) {
        return value instanceof Json.Arr row && row.items().stream().allMatch(Json.Text.class::isInstance);
    }

    private static List<TableText.Line> lines(Json.Arr rows) {
        return IntStream.range(0, rows.items().size())
                .mapToObj(i -> new TableText.Line(
                        i + 1,
                        ((Json.Arr) rows.items().get(i))
                                .items().stream()
                                        .map(cell -> ((Json.Text) cell).value())
                                        .toList()))
                .toList();
    }
}
