package wickbench.shell;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import wickbench.widgets.Badge;

/**
 * Finds words of a window that are cut off: what a control needs is held against what it got.
 *
 * <p>What one can scroll to from top to bottom is whole. Words that somebody typed are theirs, and drawings are not looked at.
 */
final class CutOff {
    /** Sizes are rounded on the way. */
    private static final int ROUNDED = 1;

    private final List<String> found = new ArrayList<>();

    private CutOff() {}

    /** Returns the words; columns of tables are measured anew for it, so the window is no longer as it was. */
    static List<String> in(Shell shell) {
        CutOff cut = new CutOff();
        cut.lookAt(shell);
        return cut.found;
    }

    private void lookAt(Control control) {
        if (!control.isVisible()) {
            return;
        }
        if (control instanceof Table table) {
            CutColumns.in(table).forEach(found::add);
        } else if (control instanceof Combo combo) {
            note(combo.getText(), wide(combo, combo.getText()) > combo.getClientArea().width);
        } else if (control instanceof Text text) {
            note(
                    text.getMessage(),
                    text.getText().isEmpty() && wide(text, text.getMessage()) > text.getClientArea().width);
        } else if (control instanceof Label label) {
            note(label.getText(), !label.getText().isBlank() && (small(label) || clipped(label)));
        } else if (control instanceof Button button) {
            note(button.getText(), !button.getText().isBlank() && (small(button) || clipped(button)));
        } else if (control instanceof Badge badge) {
            note(badge.shown().word(), !badge.whole() || clipped(badge));
        } else if (control instanceof Composite box) {
            for (Control child : box.getChildren()) {
                lookAt(child);
            }
        }
    }

    private void note(String words, boolean cut) {
        if (cut) {
            found.add(words.replace("&", ""));
        }
    }

    private static boolean small(Control control) {
        Point size = control.getSize();
        boolean wraps = (control.getStyle() & SWT.WRAP) != 0;
        Point needed = control.computeSize(wraps ? size.x : SWT.DEFAULT, SWT.DEFAULT);
        return wraps ? needed.y > size.y + ROUNDED : needed.x > size.x + ROUNDED;
    }

    /** Tells whether part of it lies outside of what it stands in, where nobody can scroll to it. */
    private static boolean clipped(Control control) {
        Rectangle at = new Rectangle(0, 0, control.getSize().x, control.getSize().y);
        boolean scrolls = false;
        for (Control in = control; !(in instanceof Shell); in = in.getParent()) {
            at.x += in.getLocation().x;
            at.y += in.getLocation().y;
            Rectangle room = in.getParent().getClientArea();
            scrolls |= in.getParent() instanceof ScrolledComposite;
            boolean beside = at.x < -ROUNDED || at.x + at.width > room.width + ROUNDED;
            boolean below = !scrolls && (at.y < -ROUNDED || at.y + at.height > room.height + ROUNDED);
            if (beside || below) {
                return true;
            }
        }
        return false;
    }

    private static int wide(Control control, String words) {
        GC gc = new GC(control);
        gc.setFont(control.getFont());
        int wide = gc.textExtent(words).x;
        gc.dispose();
        return wide;
    }
}
