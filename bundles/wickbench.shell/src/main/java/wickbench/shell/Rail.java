package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Focus;
import wickbench.widgets.Scroller;
import wickbench.widgets.Theme;

/** The places of the desk, one below the other; the arrow keys go from one to the next. */
final class Rail {
    private static final int WIDTH = 184;
    private final Scroller scroller;
    private final Composite column;
    private final Theme theme;
    private final Consumer<String> go;
    private final List<RailItem> items = new ArrayList<>();
    private List<Place> shown = List.of();

    Rail(Composite parent, Theme theme, Consumer<String> go) {
        this.theme = theme;
        this.go = go;
        Composite ground = new Composite(parent, SWT.NONE);
        ground.setBackground(theme.color(theme.palette().raised()));
        ground.setLayout(new FillLayout());
        GridData data = new GridData(SWT.FILL, SWT.FILL, false, true);
        data.widthHint = theme.px(WIDTH);
        ground.setLayoutData(data);
        scroller = new Scroller(ground, theme);
        column = scroller.content();
        column.setLayout(new RailColumn(theme));
    }

    /** Shows these places and marks the current one. */
    void show(List<Place> places, Optional<String> current) {
        if (places.equals(shown)) {
            mark(current);
            return;
        }
        boolean held = Focus.within(column);
        shown = List.copyOf(places);
        items.forEach(Control::dispose);
        items.clear();
        for (Place place : places) {
            RailItem item = new RailItem(column, theme, place, items.size() + 1);
            item.onPress(() -> go.accept(place.id()));
            item.onStep(by -> step(item, by));
            item.addListener(SWT.FocusIn, event -> stop(item));
            items.add(item);
        }
        mark(current);
        scroller.measure();
        column.layout();
        if (held) {
            focus();
        }
    }

    void mark(Optional<String> current) {
        items.forEach(item -> item.current(current.equals(Optional.of(item.id()))));
        items.stream().filter(RailItem::current).findFirst().ifPresent(item -> {
            stop(item);
            scroller.reveal(item);
        });
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
