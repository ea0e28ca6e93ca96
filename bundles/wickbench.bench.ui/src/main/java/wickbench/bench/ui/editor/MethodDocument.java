package wickbench.bench.ui.editor;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wickbench.api.json.Json;
import wickbench.api.method.Unit;

/** Makes of what stands in the fields the document that a method's file would hold. */
final class MethodDocument {
    /** Parts that every method has; absent they would be complained of as a whole, and not field by field. */
    private static final List<String> ALWAYS =
            List.of("target", "marks", "limit", "timing", "amounts", "amounts.sample");

    private final MethodText text;
    private final Map<String, Object> tree = new LinkedHashMap<>();
    private final Map<String, String> wrong = new LinkedHashMap<>();

    private MethodDocument(MethodText text) {
        this.text = text;
        ALWAYS.forEach(this::branch);
    }

    /**
     * What came of the fields.
     *
     * @param document without what could not be read
     * @param wrong what could not be read, by its path, in words
     */
    record Made(Json.Obj document, Map<String, String> wrong) {}

    static Made of(MethodText text, int version) {
        MethodDocument made = new MethodDocument(text);
        made.fill(version);
        return new Made((Json.Obj) json(made.tree), made.wrong);
    }

    private void fill(int version) {
        tree.put("version", new Json.Num(BigDecimal.valueOf(version)));
        for (Section section : Section.values()) {
            section.asks().stream().filter(ask -> Applies.to(ask.path(), text)).forEach(ask -> take(ask, ask.path()));
            section.rows().ifPresent(this::rows);
        }
        String route = text.text("route");
        unit("amounts.sample", route.startsWith("swab") ? Unit.CM2 : route.equals("food-solid") ? Unit.G : Unit.ML);
        unit("amounts.liquid", Unit.ML);
        unit("storage", Unit.CELSIUS);
    }

    private void rows(Section.Rows rows) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (int i = 0; i < text.rows(rows.path()); i++) {
            list.add(new LinkedHashMap<>());
        }
        if (!list.isEmpty()) {
            branch(parent(rows.path())).put(last(rows.path()), list);
        }
        for (int i = 0; i < list.size(); i++) {
            for (Ask ask : rows.asks()) {
                take(ask, rows.path() + "[" + i + "]." + ask.path());
            }
        }
    }

    private void take(Ask ask, String path) {
        String typed = text.text(path).strip();
        if (!typed.isEmpty()) {
            try {
                branch(parent(path)).put(last(path), value(ask.kind(), typed));
            } catch (IllegalArgumentException e) {
                wrong.put(path, e.getMessage());
            }
        }
    }

    private static Json value(Ask.Kind kind, String typed) {
        return switch (kind) {
            case LINE, PROSE, CHOICE -> new Json.Text(typed);
            case LINES ->
                Json.texts(Arrays.stream(typed.split("\\R"))
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .toList());
            case NUMBER -> new Json.Num(number(typed));
            case SPAN -> new Json.Num(SpanText.seconds(typed));
        };
    }

    private static BigDecimal number(String typed) {
        try {
            return new BigDecimal(typed.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(EditorWords.get("wrong.number", typed), e);
        }
    }

    /** Adds the unit that the route leaves no choice about. */
    private void unit(String path, Unit unit) {
        Object branch = path.contains(".") ? branch(parent(path)).get(last(path)) : tree.get(path);
        if (branch instanceof Map<?, ?>) {
            branch(path).put("unit", new Json.Text(unit.symbol()));
        }
    }

    /** Returns the object at a path, made where there is none yet. */
    @SuppressWarnings("unchecked")
    private Map<String, Object> branch(String path) {
        Map<String, Object> at = tree;
        for (String name : path.isEmpty() ? new String[0] : path.split("\\.")) {
            int row = name.indexOf('[');
            at = row < 0
                    ? (Map<String, Object>) at.computeIfAbsent(name, some -> new LinkedHashMap<String, Object>())
                    : ((List<Map<String, Object>>) at.get(name.substring(0, row)))
                            .get(Integer.parseInt(name, row + 1, name.length() - 1, 10));
        }
        return at;
    }

    private static Json json(Object value) {
        if (value instanceof Map<?, ?> map) {
            return new Json.Obj(map.entrySet().stream()
                    .collect(Collectors.toMap(
                            each -> (String) each.getKey(),
                            each -> json(each.getValue()),
                            (a, b) -> a,
                            LinkedHashMap::new)));
        }
        return value instanceof List<?> list
                ? Json.array(list.stream().map(MethodDocument::json).toList())
                : (Json) value;
    }

    private static String parent(String path) {
        return path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "";
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
