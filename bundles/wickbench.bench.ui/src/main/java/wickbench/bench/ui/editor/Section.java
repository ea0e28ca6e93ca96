package wickbench.bench.ui.editor;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickbench.api.method.Format;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;

/** The steps of the editor, in the order in which a method is thought through. */
enum Section {
    KIT(
            List.of(
                    Ask.line("id"),
                    Ask.line("title"),
                    Ask.line("kit"),
                    Ask.line("insert_revision"),
                    Ask.line("target.name"),
                    Ask.choice("target.basis", Basis.values()),
                    Ask.lines("target.not_seen")),
            new Rows(
                    "target.factors",
                    List.of(Ask.choice("to", Basis.values()), Ask.number("factor"), Ask.line("source")))),
    SAMPLE(
            List.of(
                    Ask.choice("route", Route.values()),
                    Ask.number("amounts.sample.value"),
                    Ask.number("amounts.liquid.value"),
                    Ask.number("storage.low"),
                    Ask.number("storage.high")),
            new Rows(
                    "pre_checks",
                    List.of(
                            Ask.line("name"),
                            Ask.number("low"),
                            Ask.number("high"),
                            Ask.unit("unit", Arrays.asList(Unit.values()))))),
    STRIP(List.of(
            Ask.choice("format", Format.values()),
            Ask.line("marks.control"),
            Ask.line("marks.hook"),
            Ask.line("marks.test"),
            Ask.choice("faint_test", Seen.SEEN, Seen.NOT_SEEN))),
    LIMIT(List.of(
            Ask.number("limit.value"),
            Ask.unit("limit.unit", limits()),
            Ask.choice("limit.holds", Holds.values()),
            Ask.number("limit.probability"),
            Ask.number("positive_from"),
            Ask.number("hook_onset"))),
    TIMES(List.of(
            Ask.span("timing.develop_s"),
            Ask.span("timing.window_s"),
            Ask.span("timing.warm_up_s"),
            Ask.span("timing.shake_s"),
            Ask.span("timing.extract_hold_s"))),
    STEPS(
            List.of(),
            new Rows(
                    "steps",
                    List.of(
                            Ask.prose("text"),
                            Ask.number("quantity.value"),
                            Ask.unit("quantity.unit", Arrays.asList(Unit.values())),
                            Ask.span("lasts_s"),
                            Ask.prose("caution")))),
    CAUTIONS(List.of(Ask.lines("cautions"))),
    LOOK(List.of());

    private final List<Ask> asks;
    private final Optional<Rows> rows;

    /** Things of one kind, as many as there are. */
    record Rows(String path, List<Ask> asks) {}

    Section(List<Ask> asks) {
        this.asks = asks;
        rows = Optional.empty();
    }

    Section(List<Ask> asks, Rows rows) {
        this.asks = asks;
        this.rows = Optional.of(rows);
    }

    List<Ask> asks() {
        return asks;
    }

    Optional<Rows> rows() {
        return rows;
    }

    String words() {
        return EditorWords.get("section." + name().toLowerCase(Locale.ROOT));
    }

    String line() {
        return EditorWords.get("section.line." + name().toLowerCase(Locale.ROOT));
    }

    /** Returns where a field of the document is filled in; the kit's step for what has no field of its own. */
    static Section of(String path) {
        return Arrays.stream(values())
                .filter(section -> section.holds(path))
                .findFirst()
                .orElse(KIT);
    }

    /** Returns the words for the field at a path, with the number of its row where it stands in one. */
    String words(String path) {
        return rows.filter(some -> path.startsWith(some.path() + "["))
                .map(some -> rowWords(some, path))
                .orElseGet(() -> asks.stream()
                        .filter(ask -> near(ask.path(), path))
                        .findFirst()
                        .map(Ask::words)
                        .orElse(path));
    }

    private static String rowWords(Rows rows, String path) {
        int end = path.indexOf(']');
        int number = 1 + Integer.parseInt(path, rows.path().length() + 1, end, 10);
        String rest = path.substring(Math.min(path.length(), end + 2));
        String field = rows.asks().stream()
                .filter(ask -> near(ask.path(), rest))
                .findFirst()
                .map(Ask::words)
                .orElse("");
        return EditorWords.get("row.field", EditorWords.get("row." + rows.path(), number), field);
    }

    private boolean holds(String path) {
        return asks.stream().anyMatch(ask -> near(ask.path(), path))
                || rows.filter(some -> path.startsWith(some.path())).isPresent();
    }

    /** Tells whether a complaint about one path is about the field at another: it may name the whole or a part of it. */
    static boolean near(String field, String path) {
        return field.equals(path) || field.startsWith(path + ".");
    }

    private static List<Unit> limits() {
        return Arrays.stream(Unit.values())
                .filter(unit -> switch (unit.kind()) {
                    case MASS_FRACTION, CONCENTRATION, AREA_DENSITY, PER_SWAB -> true;
                    default -> false;
                })
                .toList();
    }
}
