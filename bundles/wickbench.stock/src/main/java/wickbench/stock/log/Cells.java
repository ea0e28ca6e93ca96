package wickbench.stock.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cuts a line into its cells. */
final class Cells {
    static final int MOST = 200;

    private Cells() {}

    /** Returns the cells without quotes and blanks around; empty when a quotation mark stands alone or there are too many. */
    static Optional<List<String>> of(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
            if (cells.size() > MOST) {
                return Optional.empty();
            }
        }
        cells.add(cell.toString().strip());
        return quoted ? Optional.empty() : Optional.of(cells);
    }
}
