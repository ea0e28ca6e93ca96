package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;

/** Buttons that a glove hits. */
public final class Wide {
    private static final int HEIGHT = 44;
    private static final int WIDTH = 112;

    private Wide() {}

    public static Button button(Button button, Theme theme) {
        GridData data = new GridData(SWT.END, SWT.CENTER, false, false);
        data.heightHint = theme.px(HEIGHT);
        data.widthHint = Math.max(theme.px(WIDTH), button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + theme.px(16));
        button.setLayoutData(data);
        return button;
    }
}
