package wickbench.stock.ui;

import org.eclipse.swt.widgets.Composite;
import wickbench.shell.ActForm;
import wickbench.shell.ActForm.Titled;
import wickbench.shell.PageContext;

/** Begins the forms of this page, each under a key of its words. */
final class Forms {
    private Forms() {}

    /** @param facts go into title and line */
    static ActForm begin(
            Composite parent, PageContext context, String key, Runnable grown, Runnable leave, Object... facts) {
        Titled what = new Titled(StockUiWords.get(key + ".title", facts), StockUiWords.get(key + ".line", facts));
        return new ActForm(parent, context, StockUiWords::get, what, grown, leave);
    }
}
