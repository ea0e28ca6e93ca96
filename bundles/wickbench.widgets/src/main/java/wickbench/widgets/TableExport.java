package wickbench.widgets;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.progress.Progress;
import wickbench.api.report.Csv;
import wickbench.api.report.WholeFile;
import wickbench.api.words.Decimals;

/** Writes what a table shows, and all rows that follow, into a CSV file. */
record TableExport<T>(RowSource<T> source, Ask ask, List<Column<T>> columns) {
    private static final int SLICE = 1000;

    /**
     * Writes the file, whole or not at all.
     *
     * @return how many rows; empty when the person stopped it, and then nothing was written
     */
    Optional<Long> write(Path file, Progress progress) throws IOException {
        source.leaving(ask);
        List<Long> rows = new ArrayList<>(1);
        new WholeFile(file).write(bytes -> {
            writeAll(bytes, progress).ifPresent(rows::add);
            return !rows.isEmpty();
        });
        return rows.stream().findFirst();
    }

    private Optional<Long> writeAll(OutputStream bytes, Progress progress) throws IOException {
        Writer out = new OutputStreamWriter(bytes, StandardCharsets.UTF_8);
        out.append(Csv.MARK);
        Csv.line(out, columns.stream().map(Column::title).toList());
        Optional<Long> rows = writeRows(out, progress);
        out.flush();
        return rows;
    }

    private Optional<Long> writeRows(Appendable out, Progress progress) throws IOException {
        long all = source.count(ask).orElse(0);
        long done = 0;
        Optional<T> after = Optional.empty();
        while (true) {
            Slice<T> slice = source.rows(ask, after, SLICE);
            for (T row : slice.rows()) {
                Csv.line(out, columns.stream().map(column -> cell(column, row)).toList());
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

    /** What lines up at the right is a number, which files write with a point. */
    private static <T> String cell(Column<T> column, T row) {
        String shown = column.text().apply(row);
        return column.right() ? Decimals.pointed(shown) : shown;
    }
}
