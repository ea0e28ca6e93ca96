package wickbench.shell;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;

/** What is due, the most urgent first, as much of it as fits whole; the rest in a menu. */
final class DueBar {
    private final Theme theme;
    private final Composite box;
    private final Button more;
    private List<Due> due = List.of();
    private List<DueItem> items = List.of();
    private Consumer<Due> go = chosen -> {};

    DueBar(Composite parent, Theme theme) {
        this.theme = theme;
        box = theme.controls().box(parent, 1);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        // whatever is due takes the room that is left and asks for none
        data.widthHint = 0;
        box.setLayoutData(data);
        more = theme.controls().button(box, "", this::others);
        Names.keys(more, ShellWords.get("keys.everywhere.due.key"));
        box.setLayout(new Row());
    }

    /** Shows this; pressing one goes where one deals with it. */
    void show(List<Due> all, Consumer<Due> press) {
        if (all.equals(due)) {
            // made anew it would lose the keyboard every minute
            return;
        }
        boolean held = items.stream().anyMatch(DueItem::focused) || more.isFocusControl();
        items.forEach(DueItem::dispose);
        due = List.copyOf(all);
        go = press;
        items = due.stream()
                .map(item -> new DueItem(box, theme, item, () -> go.accept(item)))
                .toList();
        more.moveBelow(null);
        box.layout(true, true);
        if (held) {
            focus();
        }
    }

    /** Puts the keyboard on the first thing due; tells whether there is one. */
    boolean focus() {
        return !items.isEmpty()
                && (items.get(0).control().isVisible() ? items.get(0).focus() : more.forceFocus());
    }

    /** Returns how many stand in the bar itself. */
    int shown() {
        return (int) items.stream().filter(item -> item.control().getVisible()).count();
    }

    /** Makes the menu of what does not fit. */
    Menu menu() {
        Menu menu = new Menu(more);
        for (Due item : due.subList(shown(), due.size())) {
            MenuItem choice = new MenuItem(menu, SWT.PUSH);
            choice.setText(item.mark().word());
            choice.addListener(SWT.Selection, event -> go.accept(item));
        }
        // what was chosen is told after the menu has gone
        menu.addListener(SWT.Hide, event -> menu.getDisplay().asyncExec(menu::dispose));
        return menu;
    }

    private void others() {
        Menu menu = menu();
        Point at = more.toDisplay(0, more.getSize().y);
        menu.setLocation(at);
        menu.setVisible(true);
    }

    /** Items to the right end; those behind the first that does not fit are left to the menu. */
    private final class Row extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wide, int high, boolean flush) {
            int width = 0;
            int height = size(more).y;
            for (DueItem item : items) {
                width += size(item.control()).x + gap();
                height = Math.max(height, size(item.control()).y);
            }
            return new Point(wide == SWT.DEFAULT ? width : wide, high == SWT.DEFAULT ? height : high);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = composite.getClientArea();
            int fit = fitting(area.width);
            more.setVisible(fit < items.size());
            say(items.size() - fit);
            int x = area.x + area.width - width(fit);
            for (int i = 0; i < items.size(); i++) {
                Control item = items.get(i).control();
                item.setVisible(i < fit);
                if (i < fit) {
                    place(item, x, area);
                    x += size(item).x + gap();
                }
            }
            if (fit < items.size()) {
                place(more, x, area);
            }
        }

        private int fitting(int room) {
            int fit = items.size();
            while (fit > 0 && width(fit) > room) {
                fit--;
            }
            return fit;
        }

        /** Returns what so many items take, with the menu where some are left. */
        private int width(int fit) {
            int width = fit < items.size() ? moreWidth(items.size() - fit) : -gap();
            for (DueItem item : items.subList(0, fit)) {
                width += size(item.control()).x + gap();
            }
            return width;
        }

        private int moreWidth(int left) {
            say(left);
            return size(more).x;
        }

        private void say(int left) {
            more.setText(ShellWords.get(left < items.size() ? "due.more" : "due.all", left));
        }

        private void place(Control control, int x, Rectangle area) {
            Point size = size(control);
            control.setBounds(x, area.y + (area.height - size.y) / 2, size.x, size.y);
        }

        private Point size(Control control) {
            return control.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        }

        private int gap() {
            return theme.metrics().grid(1);
        }
    }
}
