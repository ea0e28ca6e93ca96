package wickbench.figures.sums;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/**
 * The cells of a table as they are written: CSV (RFC 4180) with commas, semicolons (then decimal commas are understood) or tabs.
 *
 * @param source the name of the file, for complaints
 * @param lines those that are not blank
 * @param decimalComma a comma in a number is a decimal comma
 */
public record TableText(String source, List<Line> lines, boolean decimalComma) {
    /** No table of tests comes near it; what is larger is not such a table. */
    public static final long LARGEST_BYTES = 16L << 20;

    public TableText {
        lines = List.copyOf(lines);
    }

    /**
     * One line that is not blank.
     *
     * @param number in the file, counted from 1
     */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Reads a file's bytes.
     *
     * @throws BadInput when they are too many, no UTF-8, or a quotation mark is not closed
     */
    public static TableText of(String source, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            throw new BadInput(Complaint.of(source, SumWords.get("table.large", LARGEST_BYTES)));
        }
        try {
            return of(
                    source,
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(bytes))
                            .toString());
        } catch (CharacterCodingException e) {
            throw new BadInput(Complaint.of(source, SumWords.get("table.not-utf8")));
        }
    }

    /** Reads a text, such as what was copied from a spreadsheet. */
    public static TableText of(String source, String written) {
        // the byte order mark that spreadsheets put before UTF-8
        String text = written.startsWith("\uFEFF") ? written.substring(1) : written;
        char separator = separator(text);
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            number++;
            if (!line.isBlank()) {
                lines.add(new Line(number, cells(source, number, line, separator)));
            }
        }
        return new TableText(source, lines, separator != ',');
    }

    /** Takes rows of cells as typed; blank ones at the end of a row, and blank rows, are left out. */
    public static TableText ofRows(String source, List<List<String>> rows) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<String> cells = new ArrayList<>(rows.get(i));
            while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
                cells.remove(cells.size() - 1);
            }
            if (!cells.isEmpty()) {
                lines.add(new Line(i + 1, cells.stream().map(String::strip).toList()));
            }
        }
        return new TableText(source, lines, true);
    }

    /** Tells whether the first line names columns: each of its cells begins with a letter. */
    public boolean isHeaded() {
        return !lines.isEmpty() && lines.get(0).cells().stream().allMatch(Numbers::isHeading);
    }

    /** Returns the lines below the header, if there is one. */
    public List<Line> body() {
        return lines.subList(isHeaded() ? 1 : 0, lines.size());
    }

    /** Returns the rows below the header, with the columns in the order asked for where the header names them all. */
    public List<List<String>> arranged(List<String> columns) {
        List<String> names = isHeaded()
                ? lines.get(0).cells().stream()
                        .map(cell -> cell.toLowerCase(Locale.ROOT))
                        .toList()
                : List.of();
        boolean named = !columns.isEmpty() && names.containsAll(columns);
        return body().stream()
                .map(line -> named && line.cells().size() == names.size()
                        ? columns.stream()
                                .map(column -> line.cells().get(names.indexOf(column)))
                                .toList()
                        : line.cells())
                .toList();
    }

    /** The first separator of the file decides; a comma beside a semicolon is a decimal comma. */
    private static char separator(String text) {
        String first = text.stripLeading().lines().findFirst().orElse("");
        if (first.indexOf('\t') >= 0) {
            return '\t';
        }
        return first.indexOf(';') >= 0 ? ';' : ',';
    }

    private static List<String> cells(String source, int number, String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        if (quoted) {
            throw new BadInput(Complaint.at(source, number, "", SumWords.get("table.quotes")));
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** Writes a number as people do: without a point where it is whole. */
    static String plain(double value) {
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
