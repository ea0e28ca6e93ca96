package wickbench.bench.ui.editor;

import java.util.Arrays;
import java.util.List;
import wickbench.api.method.Unit;
import wickbench.api.words.Coded;
import wickbench.reading.ReadingWords;

/**
 * One field of a method.
 *
 * @param path where its value stands in the document, from the row on where the field belongs to a row
 * @param options what it is chosen from; empty for what is typed
 */
record Ask(String path, Kind kind, List<Option> options) {
    Ask {
        options = List.copyOf(options);
    }

    /** What is typed into a field. */
    enum Kind {
        LINE,
        /** One text that may be long. */
        PROSE,
        /** Several texts, one a line. */
        LINES,
        NUMBER,
        /** A length of time; the document holds seconds. */
        SPAN,
        CHOICE
    }

    /** One of several to choose from. */
    record Option(String code, String words) {}

    static Ask line(String path) {
        return new Ask(path, Kind.LINE, List.of());
    }

    static Ask prose(String path) {
        return new Ask(path, Kind.PROSE, List.of());
    }

    static Ask lines(String path) {
        return new Ask(path, Kind.LINES, List.of());
    }

    static Ask number(String path) {
        return new Ask(path, Kind.NUMBER, List.of());
    }

    static Ask span(String path) {
        return new Ask(path, Kind.SPAN, List.of());
    }

    static Ask choice(String path, Coded... codes) {
        return new Ask(
                path,
                Kind.CHOICE,
                Arrays.stream(codes)
                        .map(code -> new Option(code.code(), ReadingWords.text(code)))
                        .toList());
    }

    static Ask unit(String path, List<Unit> units) {
        return new Ask(
                path,
                Kind.CHOICE,
                units.stream()
                        .map(unit -> new Option(unit.symbol(), unit.symbol()))
                        .toList());
    }

    String words() {
        return EditorWords.get("field." + path);
    }
}
