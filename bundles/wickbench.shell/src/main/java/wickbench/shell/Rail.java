package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Theme;

/** The places of the desk, one below the other; the arrow keys go from one to the next. */
final class Rail {
    private static final int WIDTH = 184;
    private final Composite column;
    private final Theme theme;
    private final Consumer<String> go;
    private final List<RailItem> items = new ArrayList<>();

    Rail(Composite parent, Theme theme, Consumer<String> go) {
        this.theme = theme;
        this.go = go;
        column = new Composite(parent, SWT.NONE);
        column.setBackground(theme.color(theme.palette().raised()));
        GridLayout layout = new GridLayout();
        layout.marginWidth = theme.metrics().grid(1);
        layout.marginHeight = theme.metrics().grid(1.5);
        layout.verticalSpacing = theme.px(4);
        column.setLayout(layout);
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = theme.px(WIDTH);
        column.setLayoutData(data);
    }

    /** Shows these places and marks the current one. */
    void fill(List<Place> places, Optional<String> current) {
        items.forEach(Control::dispose);
        items.clear();
        for (Place place : places) {
            RailItem item = new RailItem(column, theme, place, items.size() + 1);
            item.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
            item.onPress(() -> go.accept(place.id()));
            item.onStep(by -> step(item, by));
            item.addListener(SWT.FocusIn, event -> stop(item));
            items.add(item);
        }
        mark(current);
        column.layout();
    }

    void mark(Optional<String> current) {
        items.forEach(item -> item.current(current.equals(Optional.of(item.id()))));
        items.stream().filter(RailItem::current).findFirst().ifPresent(this::stop);
    }

    /** Lets Tab stop once at the rail, not at each of its places. */
    private void stop(RailItem item) {
        column.setTabList(new Control[] {item});
    }

    /** Puts the focus on the current place. */
    void focus() {
        items.stream().filter(RailItem::current).findFirst().ifPresent(Control::setFocus);
    }

    private void step(RailItem from, int by) {
        items.get(Math.floorMod(items.indexOf(from) + by, items.size())).setFocus();
    }
}
