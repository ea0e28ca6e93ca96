package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Meaning;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The caution that is always in sight; nothing hides it. */
final class Caution {
    private Caution() {}

    static Composite under(Composite parent, Theme theme) {
        Composite row = new Composite(parent, SWT.NONE);
        row.setBackground(theme.color(theme.palette().raised()));
        row.addListener(SWT.Paint, event -> {
            event.gc.setForeground(theme.color(theme.palette().edge()));
            event.gc.drawLine(0, 0, row.getSize().x, 0);
        });
        GridLayout layout = new GridLayout();
        layout.marginWidth = theme.metrics().grid(2);
        layout.marginHeight = 0;
        layout.marginTop = theme.px(8);
        row.setLayout(layout);
        row.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
        Label words = theme.controls().text(row, Type.SMALL, ShellWords.get("caution"));
        words.setForeground(theme.color(theme.tone(Meaning.NEUTRAL).ink()));
        return row;
    }
}
