package wickbench.report.sheet;

import java.util.List;
import wickbench.api.report.Report;
import wickbench.api.report.Section.Table;

/** The tables of a report, which are all that a spreadsheet can hold of it. */
final class Tables {
    private Tables() {}

    static List<Table> of(Report report) {
        return report.sections().stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
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
