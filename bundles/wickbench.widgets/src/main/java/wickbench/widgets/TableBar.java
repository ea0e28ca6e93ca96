package wickbench.widgets;

import java.util.OptionalLong;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Text;
import wickbench.api.words.Decimals;

/** The bar over a table: filter box, how many rows, and the button of the table's menu. */
final class TableBar {
    /** A person who is typing is not asked for by each letter. */
    private static final int PAUSE_MILLIS = 250;

    private static final int FILTER_WIDTH = 96;

    private final Text filter;
    private final Label said;
    private final Label beyond;
    private final Label selected;
    private final Button menuButton;
    private final Runnable changed;
    private boolean quiet;

    TableBar(Composite parent, Theme theme, String name, Runnable changed) {
        this.changed = changed;
        Controls controls = theme.controls();
        Composite row = Fit.wide(controls.box(parent, 5));
        filter = Fit.wide(controls.search(row));
        // narrower where there is no room: the button of the menu must stay in sight
        ((GridData) filter.getLayoutData()).widthHint = theme.px(FILTER_WIDTH);
        ((GridData) filter.getLayoutData()).minimumWidth = theme.px(FILTER_WIDTH) / 3;
        filter.setMessage(WidgetWords.get("table.filter"));
        Names.give(filter, () -> WidgetWords.get("table.filter-of", name));
        said = controls.quiet(row, "");
        beyond = controls.quiet(row, "");
        selected = controls.quiet(row, "");
        menuButton = controls.button(row, WidgetWords.get("table.menu"), () -> {});
        Names.keys(menuButton, WidgetWords.get("keys.menu"));
        menuButton.setToolTipText(WidgetWords.get("keys.menu"));
        Runnable ask = this::ask;
        filter.addListener(SWT.Modify, event -> {
            if (!quiet) {
                filter.getDisplay().timerExec(PAUSE_MILLIS, ask);
            }
        });
    }

    void menu(Menu menu) {
        menuButton.addListener(SWT.Selection, event -> {
            menu.setLocation(menuButton.toDisplay(0, menuButton.getSize().y));
            menu.setVisible(true);
        });
    }

    String filter() {
        return filter.getText();
    }

    void filter(String words) {
        quiet = true;
        filter.setText(words);
        quiet = false;
    }

    void focusFilter() {
        filter.setFocus();
        filter.selectAll();
    }

    /** Says something; an export may end when the bar is gone. */
    void say(String words) {
        if (!said.isDisposed()) {
            said.setText(words);
            said.requestLayout();
        }
    }

    void count(int shown, OptionalLong all, long skipped) {
        if (all.isPresent() && all.getAsLong() > shown) {
            say(WidgetWords.get(
                    "table.some",
                    Decimals.grouped(skipped + 1),
                    Decimals.grouped(skipped + shown),
                    Decimals.grouped(all.getAsLong())));
        } else {
            say(WidgetWords.get(shown == 1 ? "table.one" : "table.all", Decimals.grouped(shown)));
        }
    }

    /** Says how many columns stand out of sight, at the right. */
    void beyond(int columns) {
        String words = columns == 0
                ? ""
                : WidgetWords.get(columns == 1 ? "table.beyond-one" : "table.beyond", Decimals.grouped(columns));
        if (!beyond.isDisposed() && !words.equals(beyond.getText())) {
            beyond.setText(words);
            beyond.requestLayout();
        }
    }

    void selected(int count) {
        selected.setText(count > 1 ? WidgetWords.get("table.selected", Decimals.grouped(count)) : "");
        selected.requestLayout();
    }

    private void ask() {
        if (!filter.isDisposed()) {
            changed.run();
        }
    }
}
