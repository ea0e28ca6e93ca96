package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What can be done now, always in sight: the outcome, why a key does nothing yet, and the keys. */
final class ActionBar {
    private static final int HEIGHT = 40;

    private final Badge badge;
    private final Label words;
    private final Button record;
    private final Button next;
    private final Button again;

    ActionBar(Composite parent, Theme theme, Runnable toRecord, Runnable toNext, Runnable toRepeat) {
        Controls controls = theme.controls();
        Composite bar = Fit.wide(controls.box(parent, 5));
        badge = new Badge(bar, theme, Type.STRONG, new Mark("", Shape.RING, Meaning.NEUTRAL));
        badge.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        words = controls.text(bar, Type.BODY, "");
        again = tall(controls.button(bar, BenchUiWords.get("act.again"), toRepeat), theme);
        next = tall(controls.button(bar, BenchUiWords.get("act.next"), toNext), theme);
        record = tall(controls.mainButton(bar, BenchUiWords.get("act.record"), toRecord), theme);
        outcome(Optional.empty());
    }

    private static Button tall(Button button, Theme theme) {
        GridData data = new GridData(SWT.END, SWT.CENTER, false, false);
        data.heightHint = theme.px(HEIGHT);
        data.widthHint = Math.max(theme.px(120), button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + theme.px(16));
        button.setLayoutData(data);
        return button;
    }

    void outcome(Optional<Mark> mark) {
        badge.setVisible(mark.isPresent());
        ((GridData) badge.getLayoutData()).exclude = mark.isEmpty();
        ((GridLayout) badge.getParent().getLayout()).numColumns = mark.isEmpty() ? 4 : 5;
        mark.ifPresent(badge::show);
        badge.requestLayout();
    }

    void say(String text) {
        words.setText(text);
        words.requestLayout();
    }

    String said() {
        return words.getText();
    }

    /** Lets the person record, or not. */
    void mayRecord(boolean may) {
        record.setEnabled(may);
    }

    /** Lets the person go on to another strip or another strip of this sample. */
    void mayGoOn(boolean may) {
        next.setEnabled(may);
        again.setEnabled(may);
    }

    void focusNext() {
        next.setFocus();
    }
}
