package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Shell;
import wickbench.widgets.Theme;

/** A small window over the big one, which waits for it; Escape closes it. */
final class Sheet {
    private Sheet() {}

    static Shell over(Shell window, Theme theme, String title, int columns) {
        Shell sheet = new Shell(window, SWT.DIALOG_TRIM | SWT.RESIZE | SWT.APPLICATION_MODAL);
        sheet.setText(title);
        sheet.setBackground(theme.color(theme.palette().ground()));
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = theme.metrics().grid(3);
        layout.marginHeight = theme.metrics().grid(3);
        layout.horizontalSpacing = theme.metrics().grid(4);
        layout.verticalSpacing = theme.metrics().grid(1);
        sheet.setLayout(layout);
        return sheet;
    }

    /** Opens it in the middle of the window, so wide and as high as it needs. */
    static void open(Shell sheet, Shell window, int width) {
        sheet.setBounds(WindowBounds.middle(window, new Point(width, sheet.computeSize(width, SWT.DEFAULT).y)));
        sheet.open();
    }

    /** Makes it as high as it needs now, and no narrower than it is. */
    static void fit(Shell sheet) {
        int width = sheet.getSize().x;
        sheet.setSize(width, sheet.computeSize(width, SWT.DEFAULT, true).y);
        sheet.layout(true, true);
    }
}
