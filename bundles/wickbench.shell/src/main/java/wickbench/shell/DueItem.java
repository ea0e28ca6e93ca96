package wickbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import wickbench.widgets.Badge;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** One thing due in the top bar, pressed by click, Enter or Space; Tab goes on from it. */
final class DueItem {
    private final Badge badge;
    private final Theme theme;
    private final Runnable press;

    DueItem(Composite parent, Theme theme, Due due, Runnable press) {
        this.theme = theme;
        this.press = press;
        badge = new Badge(parent, theme, Type.SMALL, due.mark());
        badge.setToolTipText(ShellWords.get("due.tip"));
        badge.setCursor(theme.display().getSystemCursor(SWT.CURSOR_HAND));
        badge.addListener(SWT.MouseDown, event -> press.run());
        badge.addListener(SWT.KeyDown, this::key);
        badge.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        badge.addListener(SWT.FocusIn, event -> badge.redraw());
        badge.addListener(SWT.FocusOut, event -> badge.redraw());
        badge.addListener(SWT.Paint, event -> ring(event.gc));
        badge.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_PUSHBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (badge.isFocusControl() ? ACC.STATE_FOCUSED : 0);
            }
        });
    }

    Control control() {
        return badge;
    }

    void dispose() {
        badge.dispose();
    }

    boolean focus() {
        return badge.forceFocus();
    }

    boolean focused() {
        return badge.isFocusControl();
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.CR, SWT.KEYPAD_CR, ' ' -> press.run();
            default -> event.doit = true;
        }
    }

    private void ring(GC gc) {
        if (badge.isFocusControl()) {
            Rectangle area = badge.getClientArea();
            gc.setAntialias(SWT.ON);
            gc.setForeground(theme.color(theme.palette().accent()));
            gc.setLineWidth(theme.px(2));
            gc.drawRoundRectangle(1, 1, area.width - 3, area.height - 3, theme.px(8), theme.px(8));
        }
    }
}
