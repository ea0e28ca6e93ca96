package wickbench.stock.log;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.stock.LogShape;
import wickbench.stock.LogShape.DateOrder;
import wickbench.stock.LogShape.Degrees;

/** Finds out how a file is laid out. What could be two things is asked, never guessed. */
final class Sniffing {
    private static final int LOOKED_AT = 120;
    private static final char[] SEPARATORS = {';', '\t', ',', '|'};

    private final Path path;
    private final String file;
    private final LogShape said;

    private Sniffing(Path path, LogShape said) {
        this.path = path;
        this.file = path.getFileName().toString();
        this.said = said;
    }

    static Layout layout(Path path, LogShape said) throws IOException {
        return new Sniffing(path, said).layout();
    }

    /** A row that may hold a temperature. */
    private record Row(long number, List<String> cells) {}

    private Layout layout() throws IOException {
        List<String> start = start();
        char separator = separator(start);
        List<Row> rows = rows(start, separator);
        if (rows.isEmpty()) {
            throw LogTrouble.of(file, "no-rows");
        }
        Row first = rows.get(0);
        int time = said.timeColumn().map(column -> column - 1).orElseGet(() -> timeColumn(first.cells()));
        int clock = said.clockColumn().map(column -> column - 1).orElseGet(() -> clockColumn(first.cells(), time));
        String head = head(start, first, separator);
        int temperature = said.temperatureColumn()
                .map(column -> column - 1)
                .orElseGet(() -> temperatureColumn(rows, time, clock, titles(start, first, separator)));
        Layout open = new Layout(separator, first.number(), time, clock, temperature, DateOrder.YMD, Degrees.C);
        refuseOutside(open, first);
        return new Layout(
                separator, first.number(), time, clock, temperature, order(open), unit(first, temperature, head));
    }

    private void refuseOutside(Layout layout, Row first) {
        if (layout.columns() > first.cells().size() || layout.time() < 0 || layout.temperature() < 0) {
            throw LogTrouble.at(file, first.number(), "columns", first.cells().size());
        }
    }

    private List<String> start() throws IOException {
        List<String> lines = new ArrayList<>();
        try (LogLines reader = LogLines.open(path)) {
            Optional<String> line = reader.next();
            while (line.isPresent() && lines.size() < LOOKED_AT) {
                lines.add(line.get());
                line = reader.next();
            }
        }
        return lines;
    }

    /** The separator by which most lines hold a time and a number. */
    private char separator(List<String> lines) {
        return IntStream.range(0, SEPARATORS.length)
                .mapToObj(i -> SEPARATORS[i])
                .max(Comparator.comparingInt((Character c) -> rows(lines, c).size())
                        // of two that fit equally the earlier in the list
                        .thenComparing(c -> -new String(SEPARATORS).indexOf(c)))
                .orElseThrow();
    }

    private List<Row> rows(List<String> lines, char separator) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            long number = i + 1L;
            Cells.of(lines.get(i), separator)
                    .filter(Sniffing::holdsReading)
                    .ifPresent(cells -> rows.add(new Row(number, cells)));
        }
        return rows;
    }

    private static boolean holdsReading(List<String> cells) {
        int time = timeColumn(cells);
        return time >= 0 && IntStream.range(0, cells.size()).anyMatch(i -> i != time && isNumber(cells.get(i)));
    }

    private static int timeColumn(List<String> cells) {
        return IntStream.range(0, cells.size())
                .filter(i -> Stamp.read(cells.get(i), "").isPresent())
                .findFirst()
                .orElse(-1);
    }

    private static int clockColumn(List<String> cells, int time) {
        boolean whole = time < 0
                || time >= cells.size()
                || Stamp.read(cells.get(time), "")
                        .filter(stamp -> stamp.clock().isPresent())
                        .isPresent();
        return whole
                ? -1
                : IntStream.range(0, cells.size())
                        .filter(i -> i != time
                                && Stamp.read(cells.get(time), cells.get(i)).isPresent())
                        .filter(i -> !cells.get(i).isEmpty())
                        .findFirst()
                        .orElse(-1);
    }

    private int temperatureColumn(List<Row> rows, int time, int clock, List<String> titles) {
        Row first = rows.get(0);
        List<Integer> numbers = IntStream.range(0, first.cells().size())
                .filter(i -> i != time && i != clock && isNumber(first.cells().get(i)))
                .filter(i -> !counts(rows, i))
                .boxed()
                .toList();
        List<Integer> named = numbers.stream()
                .filter(i -> i < titles.size() && isTemperature(titles.get(i)))
                .toList();
        if (named.size() == 1 || numbers.size() == 1) {
            return named.size() == 1 ? named.get(0) : numbers.get(0);
        }
        throw LogTrouble.ask(
                file, LogShape.ASK_COLUMN, "ask-column", first.cells().size());
    }

    private static boolean isTemperature(String title) {
        String small = title.toLowerCase(Locale.ROOT);
        return small.contains("temp") || Degree.named(title).isPresent();
    }

    /** Tells whether a column counts the rows. */
    private static boolean counts(List<Row> rows, int column) {
        return rows.size() > 2
                && IntStream.range(1, rows.size())
                        .allMatch(i -> whole(rows.get(i).cells(), column)
                                == whole(rows.get(i - 1).cells(), column) + 1);
    }

    private static long whole(List<String> cells, int column) {
        String cell = column < cells.size() ? cells.get(column) : "";
        return cell.matches("\\d{1,15}") ? Long.parseLong(cell) : Long.MIN_VALUE / 2;
    }

    private static boolean isNumber(String cell) {
        return Degree.number(cell).isPresent();
    }

    private static List<String> titles(List<String> lines, Row first, char separator) {
        for (long i = first.number() - 2; i >= 0; i--) {
            Optional<List<String>> cells = Cells.of(lines.get((int) i), separator);
            if (cells.filter(found -> found.size() == first.cells().size()).isPresent()) {
                return cells.get();
            }
        }
        return List.of();
    }

    private static String head(List<String> lines, Row first, char separator) {
        return String.join(separator + " ", lines.subList(0, (int) first.number() - 1));
    }

    private Degrees unit(Row first, int temperature, String head) {
        List<String> lines = head.lines().toList();
        List<Degrees> titled = lines.stream()
                .flatMap(line -> Arrays.stream(line.split("[;\t,|]")))
                .flatMap(words -> Degree.named(words).stream())
                .distinct()
                .toList();
        return said.unit()
                .or(() -> Degree.unit(first.cells().get(temperature)))
                .or(() -> titled.stream().filter(unit -> titled.size() == 1).findFirst())
                .orElseThrow(() -> LogTrouble.ask(file, LogShape.ASK_UNIT, "ask-unit"));
    }

    /** Reads on until a date can be meant in one order only. */
    private DateOrder order(Layout layout) throws IOException {
        if (said.order().isPresent()) {
            return said.order().get();
        }
        try (LogLines reader = LogLines.open(path)) {
            Optional<String> line = reader.next();
            while (line.isPresent()) {
                Optional<DateOrder> order = Cells.of(line.get(), layout.separator())
                        .filter(cells -> cells.size() >= layout.columns())
                        .flatMap(layout::stamp)
                        .flatMap(Stamp::order);
                if (order.isPresent()) {
                    return order.get();
                }
                line = reader.next();
            }
        }
        throw LogTrouble.ask(file, LogShape.ASK_ORDER, "ask-order");
    }
}
