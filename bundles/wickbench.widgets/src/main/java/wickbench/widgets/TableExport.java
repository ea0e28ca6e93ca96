package wickbench.widgets;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import wickbench.api.progress.Progress;
import wickbench.api.report.Csv;

/** Writes what a table shows, and all rows that follow, into a CSV file. */
record TableExport<T>(RowSource<T> source, Ask ask, List<Column<T>> columns) {
    private static final int SLICE = 1000;

    /**
     * Writes to a side file and moves it over {@code file} when it is whole.
     *
     * @return how many rows; empty when the person stopped it, and then nothing was written
     */
    Optional<Long> write(Path file, Progress progress) throws IOException {
        Path side = file.resolveSibling(file.getFileName() + ".part");
        try {
            Optional<Long> rows = writeAll(side, progress);
            if (rows.isPresent()) {
                Files.move(side, file, StandardCopyOption.REPLACE_EXISTING);
            }
            return rows;
        } finally {
            Files.deleteIfExists(side);
        }
    }

    private Optional<Long> writeAll(Path side, Progress progress) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(side, StandardCharsets.UTF_8)) {
            out.append(Csv.MARK);
            Csv.line(out, columns.stream().map(Column::title).toList());
            return writeRows(out, progress);
        }
    }

    private Optional<Long> writeRows(Appendable out, Progress progress) throws IOException {
        long all = source.count(ask).orElse(0);
        long done = 0;
        Optional<T> after = Optional.empty();
        while (true) {
            Slice<T> slice = source.rows(ask, after, SLICE);
            for (T row : slice.rows()) {
                Csv.line(
                        out,
                        columns.stream().map(column -> column.text().apply(row)).toList());
            }
            done += slice.rows().size();
            if (!progress.at(done, Math.max(done, all))) {
                return Optional.empty();
            }
            if (!slice.more() || slice.rows().isEmpty()) {
                return Optional.of(done);
            }
            after = Optional.of(slice.rows().get(slice.rows().size() - 1));
        }
    }
}
