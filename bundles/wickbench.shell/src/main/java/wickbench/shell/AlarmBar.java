package wickbench.shell;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Tone;
import wickbench.widgets.Type;

/** A bar across the window for something that broke; not there while all is well. */
final class AlarmBar {
    private final Composite row;
    private final GridData place = new GridData(SWT.FILL, SWT.FILL, true, false);
    private final Label words;
    private final Button copy;
    private String details = "";

    /** What is said, and everything that is known of it. */
    record Alarm(String text, String details) {}

    AlarmBar(Composite parent, Theme theme) {
        Tone tone = theme.tone(Meaning.ALARM);
        row = new Composite(parent, SWT.NONE);
        row.setBackground(theme.color(tone.wash()));
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = theme.metrics().grid(2);
        layout.marginHeight = theme.metrics().grid(1);
        row.setLayout(layout);
        row.setLayoutData(place);
        words = theme.controls().text(row, Type.BODY, "");
        words.setForeground(theme.color(tone.ink()));
        copy = theme.controls().button(row, ShellWords.get("alarm.copy"), this::copy);
        Button dismiss = theme.controls().button(row, ShellWords.get("alarm.dismiss"), () -> visible(false));
        Names.keys(copy, ShellWords.get("keys.everywhere.alarm.key"));
        Names.keys(dismiss, ShellWords.get("keys.everywhere.alarm.key"));
        visible(false);
    }

    void show(String text, String all) {
        words.setText(text);
        details = all;
        visible(true);
    }

    /** Puts the focus on its first button; tells whether it is there. */
    boolean focus() {
        return row.getVisible() && copy.setFocus();
    }

    /** Returns what it says; empty while it is not there. */
    Optional<Alarm> shown() {
        return row.getVisible() ? Optional.of(new Alarm(words.getText(), details)) : Optional.empty();
    }

    private void copy() {
        Clipboard clipboard = new Clipboard(row.getDisplay());
        clipboard.setContents(new Object[] {details}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private void visible(boolean is) {
        row.setVisible(is);
        place.exclude = !is;
        row.getParent().layout(true, true);
    }
}
