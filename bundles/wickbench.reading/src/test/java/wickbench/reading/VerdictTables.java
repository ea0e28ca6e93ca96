package wickbench.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Quantity;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.reading.Patterns.Pattern;

/** The tables of docs/verdicts.md, made from the program. */
final class VerdictTables {
    private VerdictTables() {}

    static Map<String, Supplier<String>> all() {
        Map<String, Supplier<String>> tables = new TreeMap<>();
        for (Format format : Format.values()) {
            tables.put("patterns " + format.code(), () -> patterns(format));
        }
        tables.put("findings", VerdictTables::findings);
        tables.put("owed", VerdictTables::owed);
        tables.put("levels", VerdictTables::levels);
        return tables;
    }

    private static String patterns(Format format) {
        Stream<List<String>> rows = Patterns.of(format).stream().map(VerdictTables::pattern);
        List<String> heads = format.lines().stream().map(LineRole::code).collect(Collectors.toList());
        heads.addAll(List.of("outcome", "sign"));
        return table(heads, rows);
    }

    private static List<String> pattern(Pattern pattern) {
        Stream<String> lines = pattern.strip().format().lines().stream()
                .map(role -> words(pattern.strip().lines().get(role)));
        return Stream.concat(
                        lines,
                        Stream.of(OutcomeWords.text(pattern.outcome()), pattern.sign() ? "sign of allergen" : ""))
                .toList();
    }

    private static String words(Seen seen) {
        return ReadingWords.text(seen);
    }

    private static String findings() {
        Stream<List<String>> rows = FindingsTable.ROWS.stream()
                .map(row -> List.of(
                        "`" + row.rule() + "`", row.when(), row.severity().code()));
        return table(List.of("rule", "when", "severity"), rows);
    }

    private static String owed() {
        return table(
                List.of("reading", "format", "owed on a surface or of rinse", "owed of food"),
                OwedTest.ROWS.stream()
                        .map(row -> List.of(row.when(), row.format().code(), row.surface(), row.food())));
    }

    private static String levels() {
        return table(
                List.of(
                        "route",
                        "limit",
                        "holds",
                        "taken",
                        "liquid",
                        "swabbed",
                        "diluted",
                        "a Negative is below",
                        "because"),
                LevelsTest.rows().stream().map(VerdictTables::level));
    }

    private static List<String> level(LevelsTest.Row row) {
        return List.of(
                row.route().code(),
                row.limit().toString(),
                row.holds().code(),
                row.taken().toString(),
                row.liquid().map(Quantity::toString).orElse(""),
                row.area().map(area -> new Quantity(area, Unit.CM2).toString()).orElse(""),
                Optional.of("×" + row.dilution())
                        .filter(times -> !times.equals("×1"))
                        .orElse(""),
                row.high().toString(),
                row.why());
    }

    private static String table(List<String> heads, Stream<List<String>> rows) {
        String rule = heads.stream().map(head -> "---").collect(Collectors.joining("|", "|", "|"));
        return Stream.concat(Stream.of(line(heads), rule), rows.map(VerdictTables::line))
                .collect(Collectors.joining("\n"));
    }

    private static String line(List<String> cells) {
        return cells.stream().collect(Collectors.joining(" | ", "| ", " |"));
    }
}
