package wickbench.stock.log;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wickbench.api.progress.Progress;
import wickbench.stock.LogShape;

/** A logger's file: found out first, then read to its end, whatever its size. */
public final class LogFile {
    private static final int TELL_EACH = 1 << 16;
    private static final double COLDEST = -100;
    private static final double HOTTEST = 150;

    private final Path path;
    private final String file;
    private final Layout layout;
    private final ZoneId zone;

    private LogFile(Path path, Layout layout, ZoneId zone) {
        this.path = path;
        this.file = path.getFileName().toString();
        this.layout = layout;
        this.zone = zone;
    }

    /** Hears of temperatures, each later than the one before. */
    @FunctionalInterface
    public interface Listener {
        void reading(long millis, double celsius);
    }

    /**
     * Finds out how the file is laid out.
     *
     * @param site by whose clock it is read unless {@code said} names another
     * @throws wickbench.api.check.BadInput when it is no such file, or could be read in two ways
     */
    public static LogFile open(Path path, LogShape said, ZoneId site) {
        try {
            if (!Files.isRegularFile(path)) {
                throw LogTrouble.of(path.toString(), "absent");
            }
            return new LogFile(path, Sniffing.layout(path, said), zone(path, said, site));
        } catch (IOException e) {
            throw LogTrouble.of(path.toString(), "unreadable", e.getMessage());
        } catch (UncheckedIOException e) {
            throw LogTrouble.of(path.toString(), "unreadable", e.getCause().getMessage());
        }
    }

    private static ZoneId zone(Path path, LogShape said, ZoneId site) {
        try {
            return said.zone().map(ZoneId::of).orElse(site);
        } catch (DateTimeException e) {
            throw LogTrouble.of(path.toString(), "zone", said.zone().orElse(""));
        }
    }

    /** Returns what was found out, so that it can be remembered. */
    public LogShape shape() {
        return new LogShape(
                Optional.of(layout.order()),
                Optional.of(layout.unit()),
                Optional.of(layout.time() + 1),
                Optional.of(layout.clock() + 1).filter(column -> column > 0),
                Optional.of(layout.temperature() + 1),
                Optional.of(zone.getId()));
    }

    /**
     * Reads all rows in the order of time; a file with its newest row first is turned round.
     *
     * @param progress hears of bytes read, roughly
     * @return false when the watcher stopped it
     */
    public boolean read(Listener listener, Progress progress) {
        try {
            return newestFirst()
                    ? Reversed.read(path, layout.first(), progress, this::rows, listener)
                    : rows(path, layout.first(), listener, progress);
        } catch (IOException e) {
            throw LogTrouble.of(path.toString(), "unreadable", e.getMessage());
        }
    }

    private boolean rows(Path from, long first, Listener listener, Progress progress) throws IOException {
        long size = Files.size(from);
        long done = 0;
        WallClock clock = new WallClock(zone, true);
        try (LogLines lines = LogLines.open(from)) {
            Optional<String> line = lines.next();
            while (line.isPresent()) {
                done += line.get().length() + 1L;
                if (lines.number() >= first) {
                    row(lines, line.get(), clock, listener);
                }
                if (lines.number() % TELL_EACH == 0 && !progress.at(Math.min(done, size), size)) {
                    return false;
                }
                line = lines.next();
            }
        }
        progress.at(size, size);
        return true;
    }

    private void row(LogLines lines, String line, WallClock clock, Listener listener) {
        if (line.isBlank()) {
            return;
        }
        List<String> cells = Cells.of(line, layout.separator())
                .orElseThrow(() -> LogTrouble.at(file, lines.number(), "cells", Cells.MOST));
        if (cells.size() < layout.columns()) {
            throw LogTrouble.at(file, lines.number(), "few-cells", layout.columns(), cells.size());
        }
        String cell = cells.get(layout.temperature());
        long millis = layout.stamp(cells)
                .map(stamp -> clock.millis(stamp, layout.order(), file, lines.number()))
                .orElseThrow(() -> LogTrouble.at(file, lines.number(), "time", shown(cells.get(layout.time()))));
        OptionalDouble number = Degree.number(cell);
        // an empty cell is what a logger writes when its probe does not answer: no reading, so perhaps a gap
        if (number.isPresent()) {
            listener.reading(millis, plausible(Degree.celsius(number.getAsDouble(), layout.unit()), lines, cell));
        } else if (!isNoReading(cell)) {
            throw LogTrouble.at(file, lines.number(), "temperature", shown(cell));
        }
    }

    private double plausible(double celsius, LogLines lines, String cell) {
        if (celsius < COLDEST || celsius > HOTTEST) {
            throw LogTrouble.at(file, lines.number(), "implausible", shown(cell), (int) COLDEST, (int) HOTTEST);
        }
        return celsius;
    }

    private static boolean isNoReading(String cell) {
        return cell.isEmpty() || cell.matches("-{1,4}|(?i:n/?a|nan|err(or)?|fault|open)");
    }

    /** Returns a cell so that it can be shown on one line. */
    private static String shown(String cell) {
        String clean = cell.replaceAll("[^\\x20-\\x7e]", "?");
        return clean.length() > 40 ? clean.substring(0, 40) + "…" : clean;
    }

    private boolean newestFirst() throws IOException {
        WallClock clock = new WallClock(zone, false);
        long[] times = {Long.MIN_VALUE, Long.MIN_VALUE};
        try (LogLines lines = LogLines.open(path)) {
            Optional<String> line = lines.next();
            while (line.isPresent() && times[1] == Long.MIN_VALUE) {
                long number = lines.number();
                Optional<List<String>> cells = Cells.of(line.get(), layout.separator())
                        .filter(found -> number >= layout.first() && found.size() >= layout.columns());
                cells.flatMap(layout::stamp)
                        .map(stamp -> clock.millis(stamp, layout.order(), file, number))
                        .filter(millis -> millis != times[0])
                        .ifPresent(millis -> times[times[0] == Long.MIN_VALUE ? 0 : 1] = millis);
                line = lines.next();
            }
        }
        return times[1] != Long.MIN_VALUE && times[1] < times[0];
    }
}
