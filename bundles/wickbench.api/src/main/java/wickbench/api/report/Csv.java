package wickbench.api.report;

import java.io.IOException;
import java.util.List;

/** Writes comma-separated values (RFC 4180), each cell guarded by {@link FormulaGuard}. */
public final class Csv {
    /** Tells spreadsheets that the file is UTF-8; stands before the first line. */
    public static final char MARK = '\uFEFF';

    private static final String QUOTED = "\",;\t\r\n";

    private Csv() {}

    /** Writes a record with its line end. */
    public static void line(Appendable out, List<String> cells) throws IOException {
        String separator = "";
        for (String cell : cells) {
            out.append(separator).append(cell(cell));
            separator = ",";
        }
        out.append("\r\n");
    }

    private static String cell(String text) {
        String safe = FormulaGuard.guarded(text);
        return quoted(safe) ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }

    /** A blank at an end is quoted too, because readers drop it otherwise. */
    private static boolean quoted(String cell) {
        return cell.chars().anyMatch(c -> QUOTED.indexOf(c) >= 0) || !cell.equals(cell.strip());
    }
}
