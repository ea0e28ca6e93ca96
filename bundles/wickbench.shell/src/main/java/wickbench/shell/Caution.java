package wickbench.shell;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Meaning;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The caution that is always in sight; nothing hides it. */
final class Caution {
    private Caution() {}

    static Label in(Composite row, Theme theme) {
        Label words = theme.controls().text(row, Type.SMALL, ShellWords.get("caution"));
        words.setForeground(theme.color(theme.tone(Meaning.NEUTRAL).ink()));
        return words;
    }
}
