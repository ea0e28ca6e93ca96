package wickbench.bench.ui;

import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Theme;

/** The ground of a page: one column with a margin around it. */
final class PageBox {
    private PageBox() {}

    static Composite in(Composite parent, Theme theme) {
        Composite page = theme.controls().box(parent, 1);
        GridLayout layout = (GridLayout) page.getLayout();
        layout.marginWidth = theme.metrics().grid(2);
        layout.marginHeight = theme.metrics().grid(1);
        return page;
    }
}
