package wickbench.bench.owed;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.RunControl;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingWords;

/** Prints what is owed: a table for people, an array for machines. */
final class OwedPrint {
    private OwedPrint() {}

    static void print(List<OwedItem> items, Terminal terminal) {
        if (terminal.json()) {
            terminal.json(Json.array(items.stream().map(OwedPrint::json).toList()));
        } else if (items.isEmpty()) {
            terminal.line(OwedWords.get("owed.none"));
        } else {
            terminal.table(header(), items.stream().map(OwedPrint::row).toList());
            terminal.line(OwedWords.get("owed.count", items.size()));
        }
    }

    static Json.Obj json(OwedItem item) {
        return Json.object()
                .with("owes", item.owes().toString())
                .with("owed", item.step().owed().code())
                .with("step", item.step().code())
                .with("call_quality", item.callQuality())
                .with("since", item.since().toString())
                .with("sample", item.sample())
                .with("place", item.place())
                .withText("line", item.line())
                .withText("method", item.method().map(Object::toString))
                .with("missing", Json.texts(item.missing()))
                .with("neighbours_named", item.neighboursNamed())
                .with(
                        "answers",
                        Json.texts(item.answers().stream().map(Object::toString).toList()))
                .with(
                        "doubts",
                        Json.texts(item.doubts().stream().map(Object::toString).toList()))
                .with("done", item.done());
    }

    private static List<String> header() {
        return List.of(
                OwedWords.get("owed.since"),
                OwedWords.get("owed.step"),
                OwedWords.get("owed.sample"),
                OwedWords.get("owed.place"),
                OwedWords.get("owed.missing"),
                OwedWords.get("owed.entry"));
    }

    private static List<String> row(OwedItem item) {
        return List.of(
                item.since().toString(),
                OwedWords.get("step." + item.step().code()),
                item.sample(),
                item.place(),
                String.join(", ", missing(item)),
                item.owes().toString());
    }

    private static List<String> controls(OwedItem item) {
        return item.missing().stream()
                .map(code -> ReadingWords.text(Coded.of(RunControl.class, code)))
                .toList();
    }

    private static List<String> missing(OwedItem item) {
        List<String> missing = new ArrayList<>(
                switch (item.step()) {
                    case DECIDE ->
                        item.missing().stream().map(ReadingWords::doubt).toList();
                    case RUN_CONTROL -> controls(item);
                    default -> item.missing();
                });
        if (item.step() == Step.RE_TEST && !item.neighboursNamed()) {
            missing.add(OwedWords.get("missing.neighbours"));
        }
        if (item.callQuality()) {
            missing.add(OwedWords.get("missing.quality"));
        }
        return missing;
    }
}
