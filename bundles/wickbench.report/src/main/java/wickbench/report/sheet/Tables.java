package wickbench.report.sheet;

import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.report.Report;
import wickbench.api.report.Section.Table;
import wickbench.api.words.Decimals;

/** The tables of a report, which are all that a spreadsheet can hold of it. */
final class Tables {
    private Tables() {}

    static List<Table> of(Report report) {
        return report.sections().stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
    }

    /** Returns the cells of a row as files hold them: numbers with a point, whatever the language shows. */
    static List<String> row(Table table, List<String> shown) {
        return IntStream.range(0, shown.size())
                .mapToObj(at -> table.columns().get(at).number() ? Decimals.pointed(shown.get(at)) : shown.get(at))
                .toList();
    }

    /** Returns the text with halves of characters replaced, which no file can hold. */
    static String whole(String text) {
        boolean broken = text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE);
        return broken
                ? text.codePoints()
                        .map(c -> Character.getType(c) == Character.SURROGATE ? 0xFFFD : c)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString()
                : text;
    }
}
