package wickbench.plant.face;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.figures.sums.TableText;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.terms.PlantWords;

/**
 * Reads a table of changes: a row for each product that was made, a column for each that follows, in minutes.
 *
 * <p>Either numbers alone, whose products are then called 1, 2, 3 …, or with the products' names above and before them. An empty
 * cell, {@code -} or {@code x} is a change that must not be made.
 */
final class MatrixFile {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,7}([.,]\\d{1,9})?");
    private static final Pattern NUMERIC = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
    private static final Set<String> NEVER = Set.of("", "-", "x", "X");

    private final TableText text;
    private final boolean named;

    private MatrixFile(TableText text) {
        this.text = text;
        named = !text.lines().isEmpty()
                && text.lines().get(0).cells().stream().skip(1).anyMatch(MatrixFile::isName);
    }

    /**
     * Reads a file.
     *
     * @throws BadInput when it cannot be read or is no such table
     */
    static ChangeTable read(Path file) {
        String name = file.getFileName().toString();
        try {
            if (Files.size(file) > TableText.LARGEST_BYTES) {
                throw new BadInput(Complaint.of(name, PlantWords.get("matrix.large", TableText.LARGEST_BYTES)));
            }
            return new MatrixFile(TableText.of(name, Files.readAllBytes(file))).table();
        } catch (NoSuchFileException e) {
            throw new BadInput(Complaint.of(file.toString(), PlantWords.get("matrix.absent")));
        } catch (AccessDeniedException e) {
            throw new BadInput(Complaint.of(file.toString(), PlantWords.get("matrix.denied")));
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), PlantWords.get("matrix.unreadable", e.getMessage())));
        }
    }

    private ChangeTable table() {
        List<TableText.Line> rows =
                text.lines().subList(named ? 1 : 0, text.lines().size());
        if (rows.isEmpty()) {
            throw new BadInput(Complaint.of(text.source(), PlantWords.get("matrix.empty")));
        }
        List<String> products = named
                ? names(text.lines().get(0))
                : IntStream.rangeClosed(1, rows.size())
                        .mapToObj(Integer::toString)
                        .toList();
        if (products.size() > ChangeTable.MOST) {
            throw new BadInput(
                    Complaint.of(text.source(), PlantWords.get("matrix.many", ChangeTable.MOST, products.size())));
        }
        if (rows.size() != products.size()) {
            throw new BadInput(
                    Complaint.of(text.source(), PlantWords.get("matrix.square", products.size(), rows.size())));
        }
        return new ChangeTable(
                products,
                named
                        ? byName(products, rows)
                        : rows.stream().map(row -> times(row, products)).toList());
    }

    private List<String> names(TableText.Line header) {
        List<String> names = header.cells().subList(1, header.cells().size());
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (name.isBlank() || !seen.add(name)) {
                throw bad(header, name, PlantWords.get("matrix.names"));
            }
        }
        return names;
    }

    /** Rows may come in any order; each product has one. */
    private List<List<Optional<BigDecimal>>> byName(List<String> products, List<TableText.Line> rows) {
        List<List<Optional<BigDecimal>>> minutes = new ArrayList<>();
        products.forEach(product -> minutes.add(List.of()));
        for (TableText.Line row : rows) {
            int from = products.indexOf(row.cells().get(0));
            if (from < 0) {
                throw bad(row, row.cells().get(0), PlantWords.get("matrix.unknown"));
            }
            if (!minutes.get(from).isEmpty()) {
                throw bad(row, row.cells().get(0), PlantWords.get("matrix.twice"));
            }
            minutes.set(from, times(row, products));
        }
        return minutes;
    }

    private List<Optional<BigDecimal>> times(TableText.Line row, List<String> products) {
        List<String> cells = row.cells().subList(named ? 1 : 0, row.cells().size());
        if (cells.size() != products.size()) {
            throw bad(row, "", PlantWords.get("matrix.columns", products.size(), cells.size()));
        }
        List<Optional<BigDecimal>> times = new ArrayList<>();
        for (int to = 0; to < cells.size(); to++) {
            String cell = cells.get(to);
            if (!NEVER.contains(cell) && !isTime(cell)) {
                throw bad(row, products.get(to), PlantWords.get("matrix.minutes", cell));
            }
            times.add(NEVER.contains(cell) ? Optional.empty() : Optional.of(number(cell)));
        }
        return times;
    }

    private static boolean isName(String cell) {
        return !NUMERIC.matcher(cell).matches() && !NEVER.contains(cell);
    }

    private static boolean isTime(String cell) {
        return NUMBER.matcher(cell).matches() && ChangeTable.isTime(number(cell));
    }

    private static BigDecimal number(String cell) {
        return new BigDecimal(cell.replace(',', '.'));
    }

    private BadInput bad(TableText.Line line, String field, String words) {
        return new BadInput(Complaint.at(text.source(), line.number(), field, words));
    }
}
