package wickbench.widgets;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The rows of a native table: a window that slides over the source as one scrolls. */
final class TableRows<T> {
    /** How near the end one must be for the next slice to be read. */
    private static final int NEAR = 30;

    private final Table table;
    private final Desk desk;
    private final TableSpec<T> spec;
    private final RowFace<T> face;
    private final Runnable loaded;
    private final RowWindow<T> window = new RowWindow<>();
    private OptionalLong count = OptionalLong.empty();
    private Ask ask = new Ask("", Optional.empty());
    private Optional<Job> job = Optional.empty();

    TableRows(Table table, Desk desk, TableSpec<T> spec, TableColumns<T> columns, Runnable loaded) {
        this.table = table;
        this.desk = desk;
        this.spec = spec;
        this.face = new RowFace<>(desk.theme(), columns.all());
        this.loaded = loaded;
        if (columns.all().stream().anyMatch(column -> column.bar().isPresent())) {
            CellBars.paint(table, desk.theme());
        }
        table.getVerticalBar().addListener(SWT.Selection, event -> moved());
        table.addListener(SWT.MouseVerticalWheel, event -> moved());
        // a page may throw a table away and live on; its jobs would then deliver to nobody
        table.addListener(SWT.Dispose, event -> job.ifPresent(Job::cancel));
    }

    RowWindow<T> window() {
        return window;
    }

    OptionalLong count() {
        return count;
    }

    /** Asks for the first slice of another question; what was under way is given up. */
    void restart(Ask next) {
        job.ifPresent(Job::cancel);
        ask = next;
        List<T> keep = selected();
        job = Optional.of(desk.jobs()
                .run(
                        WidgetWords.get("table.reading", spec.name()),
                        progress -> new First<>(
                                spec.source().rows(next, Optional.empty(), RowWindow.SLICE),
                                spec.source().count(next)),
                        first -> begin(first, keep)));
    }

    /** Looks, once the table has moved, whether one has come near an end of the window. */
    void moved() {
        table.getDisplay().asyncExec(() -> {
            if (!table.isDisposed() && job.filter(Job::running).isEmpty()) {
                slide();
            }
        });
    }

    List<T> selected() {
        return Arrays.stream(table.getSelectionIndices())
                .sorted()
                .mapToObj(window.rows()::get)
                .toList();
    }

    boolean select(T row) {
        int at = window.rows().indexOf(row);
        if (at >= 0) {
            // the row that arrows go on from, too
            table.setSelection(at);
            if (at < table.getTopIndex() || at >= table.getTopIndex() + visible()) {
                table.showItem(table.getItem(at));
            }
        }
        return at >= 0;
    }

    private void slide() {
        if (window.more() && table.getTopIndex() + visible() + NEAR >= table.getItemCount()) {
            read(window.nextStart(), this::append);
        } else if (window.before() && table.getTopIndex() < NEAR) {
            read(window.previousStart(), this::prepend);
        }
    }

    private int visible() {
        return table.getClientArea().height / Math.max(1, table.getItemHeight());
    }

    private void read(Optional<T> after, Consumer<Slice<T>> take) {
        Ask now = ask;
        job = Optional.of(desk.jobs()
                .run(
                        WidgetWords.get("table.reading", spec.name()),
                        progress -> spec.source().rows(now, after, RowWindow.SLICE),
                        slice -> {
                            take.accept(slice);
                            loaded.run();
                        }));
    }

    private void begin(First<T> first, List<T> keep) {
        table.setRedraw(false);
        table.removeAll();
        window.clear();
        count = first.count();
        append(first.slice());
        int[] again = keep.stream()
                .mapToInt(window.rows()::indexOf)
                .filter(i -> i >= 0)
                .toArray();
        table.select(again);
        table.setRedraw(true);
        loaded.run();
        if (again.length != keep.size()) {
            table.notifyListeners(SWT.Selection, new Event());
        }
    }

    private void append(Slice<T> slice) {
        int top = table.getTopIndex();
        slice.rows().forEach(row -> face.put(new TableItem(table, SWT.NONE), row));
        int gone = window.append(slice);
        if (gone > 0) {
            table.remove(0, gone - 1);
            table.setTopIndex(Math.max(0, top - gone));
        }
    }

    private void prepend(Slice<T> slice) {
        int top = table.getTopIndex();
        int at = 0;
        for (T row : slice.rows()) {
            face.put(new TableItem(table, SWT.NONE, at++), row);
        }
        int gone = window.prepend(slice);
        if (gone > 0) {
            table.remove(table.getItemCount() - gone, table.getItemCount() - 1);
        }
        table.setTopIndex(top + slice.rows().size());
    }

    /** The answer to a new question. */
    private record First<T>(Slice<T> slice, OptionalLong count) {}
}
