package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** A column that scrolls down when it is higher than its room; a control that gets the focus is brought into view. */
public final class Scroller {
    private final ScrolledComposite scrolled;
    private final Composite content;

    public Scroller(Composite parent, Theme theme) {
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setBackground(parent.getBackground());
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        content = theme.controls().box(scrolled, 1);
        scrolled.setContent(content);
        scrolled.getVerticalBar().setIncrement(theme.metrics().grid(3));
        scrolled.addListener(SWT.Resize, event -> measure());
        content.addListener(SWT.Resize, this::measureIfHigher);
    }

    /** Returns the control to lay out. */
    public Composite control() {
        return scrolled;
    }

    /** Returns the grid to be filled. */
    public Composite content() {
        return content;
    }

    /** Measures anew, after something was added or has grown. */
    public void measure() {
        Rectangle area = scrolled.getClientArea();
        scrolled.setMinHeight(content.computeSize(area.width, SWT.DEFAULT).y);
        // laid out in a size that it is about to leave, controls would vanish for a moment, and the focus with them
        if (content.getSize().x == area.width) {
            content.layout(true, true);
        }
    }

    /** Brings a control of the content into view. */
    public void reveal(Control control) {
        scrolled.showControl(control);
    }

    private void measureIfHigher(Event event) {
        int wanted = content.computeSize(content.getSize().x, SWT.DEFAULT).y;
        if (wanted != scrolled.getMinHeight()) {
            scrolled.setMinHeight(wanted);
        }
    }
}
