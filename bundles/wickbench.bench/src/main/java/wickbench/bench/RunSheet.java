package wickbench.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import wickbench.api.check.BadInput;
import wickbench.api.check.Checked;
import wickbench.api.check.Complaint;
import wickbench.api.reading.Reading;

/**
 * Reads a run sheet: a CSV file (RFC 4180) with a header, one strip a row; {@code docs/formats/run-sheet.md} describes it.
 *
 * <p>Commas, semicolons or tabs may separate; with semicolons or tabs a decimal comma is understood. All or nothing: one
 * wrong cell and no reading comes out, but every complaint is told.
 */
final class RunSheet {
    private static final String SEPARATORS = ",;\t";
    private static final int MOST_COMPLAINTS = 20;

    private final String source;
    private final MethodSource methods;
    private final SiteTime siteTime;
    private final List<Complaint> complaints = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    private RunSheet(String source, MethodSource methods, Supplier<ZoneId> zone) {
        this.source = source;
        this.methods = methods;
        this.siteTime = new SiteTime(zone);
    }

    /**
     * Reads a sheet.
     *
     * @param source the file's name, for complaints and for the entries
     * @param zone the site's zone, asked only when a time has no offset
     * @return the readings in the order of the rows
     */
    static Checked<List<Reading>> read(String source, InputStream bytes, MethodSource methods, Supplier<ZoneId> zone) {
        RunSheet sheet = new RunSheet(source, methods, zone);
        try (BufferedReader text = new BufferedReader(SheetText.of(source, bytes))) {
            sheet.readAll(text);
        } catch (BadInput e) {
            return Checked.bad(e.complaints());
        } catch (IOException e) {
            return Checked.bad(Complaint.of(source, BenchWords.get("sheet.unreadable", e.getMessage())));
        }
        return sheet.complaints.isEmpty() ? Checked.good(sheet.readings) : Checked.bad(sheet.complaints);
    }

    private void readAll(BufferedReader text) throws IOException {
        text.mark(SheetText.LONGEST_LINE + 2);
        String header = text.readLine();
        if (header == null || header.isBlank()) {
            throw new BadInput(Complaint.at(source, 1, "", BenchWords.get("sheet.empty")));
        }
        text.reset();
        char separator = separator(header);
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
        try (CSVParser parser = format.parse(text)) {
            rows(parser, separator != ',');
        }
    }

    private void rows(CSVParser parser, boolean decimalComma) {
        SheetColumns columns = null;
        int line = 1;
        try {
            for (CSVRecord row : parser) {
                if (columns == null) {
                    columns = SheetColumns.of(source, line, row.toList()).orRefuse();
                } else if (!blank(row)) {
                    take(row.toList(), line, columns, decimalComma);
                }
                line = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IllegalStateException e) {
            // how the parser says that quotes do not close or stand in the wrong place
            throw new BadInput(Complaint.at(source, line, "", BenchWords.get("sheet.quotes")));
        }
    }

    private void take(List<String> cells, int line, SheetColumns columns, boolean decimalComma) {
        if (cells.size() != columns.count()) {
            complain(Complaint.at(source, line, "", BenchWords.get("sheet.cell-count", cells.size(), columns.count())));
            return;
        }
        List<Complaint> ofRow = new ArrayList<>();
        SheetCells row = new SheetCells(source, line, columns, cells, siteTime, decimalComma, ofRow);
        new SheetRow(row, methods).reading().ifPresent(readings::add);
        ofRow.forEach(this::complain);
    }

    private void complain(Complaint complaint) {
        complaints.add(complaint);
        if (complaints.size() == MOST_COMPLAINTS) {
            throw new BadInput(complaints);
        }
    }

    private static boolean blank(CSVRecord row) {
        return row.stream().allMatch(String::isBlank);
    }

    private static char separator(String header) {
        return (char) SEPARATORS
                .chars()
                .reduce((a, b) -> count(header, b) > count(header, a) ? b : a)
                .orElse(',');
    }

    private static long count(String text, int separator) {
        return text.chars().filter(c -> c == separator).count();
    }
}
