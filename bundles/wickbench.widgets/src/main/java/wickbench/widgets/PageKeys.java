package wickbench.widgets;

import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/** Function keys that work wherever the focus is on a page, while it is in front. */
public final class PageKeys {
    private final Composite page;
    private final Map<Integer, Runnable> acts;
    private final Listener listener = this::key;

    public PageKeys(Composite page, Map<Integer, Runnable> acts) {
        this.page = page;
        this.acts = Map.copyOf(acts);
        page.getDisplay().addFilter(SWT.KeyDown, listener);
        Display display = page.getDisplay();
        page.addListener(SWT.Dispose, event -> display.removeFilter(SWT.KeyDown, listener));
    }

    private void key(Event event) {
        Runnable act = acts.get(event.keyCode);
        // a key that has led to another part of the page says nothing there
        if (act != null
                && event.doit
                && page.isVisible()
                && event.widget instanceof Control at
                && at.getShell() == page.getShell()) {
            event.doit = false;
            act.run();
        }
    }
}
