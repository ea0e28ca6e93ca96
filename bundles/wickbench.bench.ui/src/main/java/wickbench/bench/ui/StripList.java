package wickbench.bench.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import wickbench.bench.run.RunStrip;
import wickbench.widgets.Fit;
import wickbench.widgets.Theme;
import wickbench.widgets.ThemedTable;
import wickbench.widgets.Type;

/** The strips of a run that has not begun. */
final class StripList {
    private final Composite card;
    private final Label head;
    private final Label first;
    private final Table table;

    StripList(Composite parent, Theme theme) {
        card = theme.controls().card(parent, 1);
        head = Fit.wide(theme.controls().label(card, Type.STRONG, ""));
        first = theme.controls().text(card, Type.SMALL, FlowWords.get("new.none.text"));
        first.setForeground(theme.color(theme.palette().quiet()));
        table = Fit.grow(ThemedTable.plain(card, theme, SWT.SINGLE | SWT.V_SCROLL, head::getText));
        for (int width : new int[] {44, 96, 150}) {
            new TableColumn(table, SWT.LEFT).setWidth(theme.px(width));
        }
        show(List.of());
    }

    Composite control() {
        return card;
    }

    void show(List<RunStrip> strips) {
        head.setText(strips.isEmpty() ? FlowWords.get("new.none") : FlowWords.get("new.count", strips.size()));
        first.setVisible(strips.isEmpty());
        ((GridData) first.getLayoutData()).exclude = !strips.isEmpty();
        card.layout(true, true);
        table.removeAll();
        for (RunStrip strip : strips) {
            new TableItem(table, SWT.NONE).setText(new String[] {
                Integer.toString(strip.number()),
                strip.unread().sample().code(),
                strip.unread().method().value()
            });
        }
        if (!strips.isEmpty()) {
            table.showItem(table.getItem(strips.size() - 1));
        }
    }
}
