package wickbench.figures.commands;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/** The cells of a file as they are written; blank lines are left out. */
record TableText(String source, List<Line> lines, boolean decimalComma) {
    /** No table of tests comes near it; what is larger is not such a table. */
    private static final long LARGEST_BYTES = 16L << 20;

    /** One line that is not blank, and its number in the file, counted from 1. */
    record Line(int number, List<String> cells) {}

    static TableText read(Path file) throws IOException {
        String source = file.getFileName().toString();
        String text = text(source, file);
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

    private static String text(String source, Path file) throws IOException {
        if (Files.size(file) > LARGEST_BYTES) {
            throw new BadInput(Complaint.of(source, FiguresWords.get("table.large", LARGEST_BYTES)));
        }
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            // the byte order mark that spreadsheets put before UTF-8
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new BadInput(Complaint.of(source, FiguresWords.get("table.not-utf8")));
        }
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
            throw new BadInput(Complaint.at(source, number, "", FiguresWords.get("table.quotes")));
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** Writes a number as people do: without a point where it is whole. */
    static String plain(double value) {
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
