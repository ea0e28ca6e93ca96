package wickbench.bench.ui;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.shell.PageContext;
import wickbench.widgets.Fit;
import wickbench.widgets.Scroller;

/** What is shown beside the table of the methods; where there is no table yet, on the whole page. */
final class MethodAside {
    private final PageContext context;
    private final Composite page;
    private final Composite body;
    private Optional<Scroller> side = Optional.empty();

    MethodAside(PageContext context, Composite page, Composite body) {
        this.context = context;
        this.page = page;
        this.body = body;
    }

    /** Empties the whole room below the heading. */
    Composite clear() {
        side = Optional.empty();
        empty(body);
        return body;
    }

    /** Takes its place at the right of the table. */
    void in(Composite sash) {
        side = Optional.of(new Scroller(sash, context.theme()));
    }

    void fill(Consumer<Composite> fill) {
        Scroller scroller = side.orElseGet(() -> {
            empty(body);
            Scroller alone = new Scroller(body, context.theme());
            Fit.grow(alone.control());
            return alone;
        });
        side = Optional.of(scroller);
        empty(scroller.content());
        fill.accept(scroller.content());
        scroller.measure();
        page.layout(true, true);
        context.ready();
    }

    Optional<Scroller> scroller() {
        return side;
    }

    static void empty(Composite box) {
        for (Control old : box.getChildren()) {
            old.dispose();
        }
    }
}
