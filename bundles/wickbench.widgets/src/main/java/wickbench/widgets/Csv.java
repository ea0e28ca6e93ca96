package wickbench.widgets;

import java.io.IOException;
import java.util.List;

/**
 * Lines of comma-separated values, RFC 4180.
 *
 * <p>A cell that a spreadsheet would take for a formula gets an apostrophe before it (OWASP, "CSV Injection").
 */
final class Csv {
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private Csv() {}

    static void line(Appendable out, List<String> cells) throws IOException {
        String separator = "";
        for (String cell : cells) {
            out.append(separator).append(cell(cell));
            separator = ",";
        }
        out.append("\r\n");
    }

    static String cell(String text) {
        String safe = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        boolean quote = safe.chars().anyMatch(c -> c == '"' || c == ',' || c == '\r' || c == '\n');
        return quote ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
