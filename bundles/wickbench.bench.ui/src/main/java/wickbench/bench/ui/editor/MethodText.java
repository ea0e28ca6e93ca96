package wickbench.bench.ui.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.words.Decimals;
import wickbench.reading.MethodJson;

/**
 * A method as it stands in the fields, right or wrong.
 *
 * @param texts what is typed, by the path in the document; blank ones are left out
 */
public record MethodText(Map<String, String> texts) {
    public static final MethodText EMPTY = new MethodText(Map.of());

    public MethodText {
        Map<String, String> spoken = new LinkedHashMap<>();
        texts.forEach((path, text) -> {
            if (!text.isBlank()) {
                spoken.put(path, text);
            }
        });
        texts = Map.copyOf(spoken);
    }

    /** Returns what stands in the fields for a method as it is issued. */
    public static MethodText of(Method method) {
        Map<String, String> texts = new LinkedHashMap<>();
        flat("", MethodJson.write(method), texts);
        return new MethodText(texts);
    }

    /** Reads a draft that was kept. */
    public static MethodText of(Json.Obj kept) {
        return new MethodText(kept.members().entrySet().stream()
                .filter(member -> member.getValue() instanceof Json.Text)
                .collect(Collectors.toMap(Map.Entry::getKey, member -> ((Json.Text) member.getValue()).value())));
    }

    /** Writes a draft so that it can be kept. */
    public Json.Obj kept() {
        Json.Obj all = Json.object();
        for (Map.Entry<String, String> each : texts.entrySet()) {
            all = all.with(each.getKey(), each.getValue());
        }
        return all;
    }

    private static void flat(String path, Json value, Map<String, String> texts) {
        if (value instanceof Json.Obj object) {
            object.members().forEach((name, member) -> flat(path.isEmpty() ? name : path + "." + name, member, texts));
        } else if (value instanceof Json.Arr list) {
            boolean lines = list.items().stream().allMatch(Json.Text.class::isInstance);
            if (lines) {
                texts.put(path, list.items().stream().map(MethodText::text).collect(Collectors.joining("\n")));
            } else {
                for (int i = 0; i < list.items().size(); i++) {
                    flat(path + "[" + i + "]", list.items().get(i), texts);
                }
            }
        } else {
            texts.put(path, path.endsWith("_s") ? SpanText.of(((Json.Num) value).value()) : text(value));
        }
    }

    private static String text(Json value) {
        return value instanceof Json.Num number ? Decimals.of(number.value()) : ((Json.Text) value).value();
    }

    public String text(String path) {
        return texts.getOrDefault(path, "");
    }

    public MethodText with(String path, String text) {
        Map<String, String> more = new LinkedHashMap<>(texts);
        more.put(path, text);
        return new MethodText(more);
    }

    public boolean empty() {
        return texts.isEmpty();
    }

    /** Returns how many rows a list has up to the last that says something. */
    int rows(String list) {
        String start = list + "[";
        return texts.keySet().stream()
                .filter(path -> path.startsWith(start))
                .mapToInt(path -> 1 + Integer.parseInt(path, start.length(), path.indexOf(']', start.length()), 10))
                .max()
                .orElse(0);
    }

    /** Takes a row out; those after it move up. */
    MethodText without(String list, int row) {
        int last = rows(list) - 1;
        MethodText moved = this;
        for (int i = row; i < last; i++) {
            moved = moved.swapped(list, i, i + 1);
        }
        String gone = list + "[" + Math.max(row, last) + "].";
        return new MethodText(moved.texts.entrySet().stream()
                .filter(each -> !each.getKey().startsWith(gone))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    /** Lets two rows change places. */
    MethodText swapped(String list, int one, int other) {
        String first = list + "[" + one + "].";
        String second = list + "[" + other + "].";
        Map<String, String> all = new LinkedHashMap<>();
        texts.forEach((path, text) -> {
            if (path.startsWith(first)) {
                all.put(second + path.substring(first.length()), text);
            } else if (path.startsWith(second)) {
                all.put(first + path.substring(second.length()), text);
            } else {
                all.put(path, text);
            }
        });
        return new MethodText(all);
    }
}
