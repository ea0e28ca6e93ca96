package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;
import wickbench.widgets.Type;

/** Everything that is owed at this site, a row each, of which one is chosen. */
final class OwedTable {
    private final Theme theme;
    private final Label head;
    private final Table table;
    private List<OwedDue> shown = List.of();

    OwedTable(Composite card, Theme theme, Runnable chosen) {
        this.theme = theme;
        head = Fit.wide(theme.controls().text(card, Type.STRONG, ""));
        table = Fit.grow(ThemedTable.plain(card, theme, SWT.SINGLE | SWT.V_SCROLL, head::getText));
        TableColumn words = new TableColumn(table, SWT.LEFT);
        table.addListener(SWT.Resize, event -> words.setWidth(table.getClientArea().width));
        table.addListener(SWT.Selection, event -> chosen.run());
        show(List.of());
    }

    Table control() {
        return table;
    }

    Optional<OwedDue> chosen() {
        int at = table.getSelectionIndex();
        return at < 0 || at >= shown.size() ? Optional.empty() : Optional.of(shown.get(at));
    }

    /** Shows what is open; what was chosen stays chosen as long as it is there. */
    void show(List<OwedDue> open) {
        if (open.equals(shown) && table.getItemCount() > 0) {
            return;
        }
        Optional<OwedDue> before = chosen();
        say(FlowWords.get(open.isEmpty() ? "owed.none" : "owed.head", open.size()));
        shown = List.copyOf(open);
        table.setRedraw(false);
        table.removeAll();
        for (OwedDue due : open) {
            TableItem row = new TableItem(table, SWT.NONE);
            Mark mark = OwedLine.mark(due);
            row.setImage(theme.image(mark.shape(), mark.meaning()));
            row.setText(OwedLine.words(due));
        }
        table.setRedraw(true);
        int same = before.map(due -> place(due, open)).orElse(0);
        if (!open.isEmpty()) {
            table.select(Math.max(0, same));
            table.showSelection();
        }
    }

    private static int place(OwedDue before, List<OwedDue> open) {
        for (int i = 0; i < open.size(); i++) {
            if (open.get(i).item().owes().equals(before.item().owes())
                    && open.get(i).item().step() == before.item().step()) {
                return i;
            }
        }
        return -1;
    }

    void say(String words) {
        head.setText(words);
        head.requestLayout();
    }
}
