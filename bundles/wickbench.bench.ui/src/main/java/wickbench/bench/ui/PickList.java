package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;

/**
 * The list that drops from a {@link PickField}; the focus stays in the field.
 *
 * <p>It lies over the page and is no window of its own, for a window may take the focus with it.
 */
final class PickList {
    private static final int MOST_ROWS = 8;

    private final Text field;
    private final Composite over;
    private final Theme theme;
    private final Consumer<Pick> taken;
    private Optional<Table> table = Optional.empty();
    private List<Pick> picks = List.of();

    /**
     * @param over what the list lies over: a grid that holds the field somewhere
     */
    PickList(Text field, Composite over, Theme theme, Consumer<Pick> taken) {
        this.field = field;
        this.over = over;
        this.theme = theme;
        this.taken = taken;
        field.addListener(SWT.FocusOut, event -> field.getDisplay().asyncExec(this::left));
    }

    boolean open() {
        return table.isPresent();
    }

    void close() {
        table.ifPresent(Table::dispose);
        table = Optional.empty();
    }

    /** Shows these and marks the first, or closes when there are none. */
    void show(List<Pick> some) {
        close();
        picks = some;
        if (!picks.isEmpty() && field.isEnabled()) {
            Table made = make();
            picks.forEach(pick -> row(made, pick));
            for (TableColumn column : made.getColumns()) {
                column.pack();
            }
            made.setSelection(0);
            place(made);
            table = Optional.of(made);
        }
    }

    /** What may not be used stands in quiet ink; the gate before the start has the last word. */
    private void row(Table made, Pick pick) {
        TableItem row = new TableItem(made, SWT.NONE);
        row.setText(new String[] {pick.value(), pick.words()});
        if (!pick.may()) {
            row.setForeground(theme.color(theme.palette().quiet()));
        }
    }

    /** Goes to the next row or the one before; returns false when there is no list. */
    boolean step(int by) {
        table.ifPresent(open -> open.setSelection(Math.floorMod(open.getSelectionIndex() + by, picks.size())));
        return open();
    }

    Optional<Pick> current() {
        return table.map(Table::getSelectionIndex).filter(at -> at >= 0).map(picks::get);
    }

    /** Closes, unless one has gone into the list by mouse. */
    private void left() {
        if (table.filter(Table::isFocusControl).isEmpty()) {
            close();
        }
    }

    private Table make() {
        Table made = ThemedTable.plain(
                over, theme, SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL, () -> BenchUiWords.get("pick.list"));
        GridData free = new GridData();
        free.exclude = true;
        made.setLayoutData(free);
        made.setBackground(theme.color(theme.palette().raised()));
        new TableColumn(made, SWT.LEFT);
        new TableColumn(made, SWT.LEFT);
        made.addListener(SWT.MouseUp, event -> {
            current().ifPresent(taken);
            field.setFocus();
        });
        return made;
    }

    private void place(Table made) {
        int rows = Math.min(MOST_ROWS, picks.size());
        Point at = over.toControl(field.toDisplay(0, field.getSize().y));
        int width =
                made.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + theme.metrics().grid(2);
        made.setBounds(
                at.x,
                at.y,
                Math.max(width, field.getSize().x),
                rows * made.getItemHeight() + theme.metrics().grid(1));
        made.moveAbove(null);
    }
}
