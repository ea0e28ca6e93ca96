package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Words to be minded, with a shape and a wash of their meaning. */
public final class Note extends Composite {
    private final Theme theme;
    private final Meaning meaning;
    private final Label words;

    public Note(Composite parent, Theme theme, Meaning meaning, String text) {
        super(parent, SWT.NONE);
        this.theme = theme;
        this.meaning = meaning;
        setBackground(theme.color(theme.tone(meaning).wash()));
        GridLayout layout = new GridLayout(1, false);
        layout.marginLeft = theme.metrics().grid(4);
        layout.marginWidth = theme.metrics().grid(1);
        layout.marginHeight = theme.metrics().grid(1);
        setLayout(layout);
        words = theme.controls().text(this, Type.BODY, text);
        words.setForeground(theme.color(theme.tone(meaning).ink()));
        addListener(SWT.Paint, event -> {
            int side = theme.px(14);
            ShapePainter.paint(
                    event.gc, theme, shape(), meaning, new Rectangle(theme.px(14), theme.px(10), side, side));
        });
    }

    public void say(String text) {
        words.setText(text);
        getParent().layout(true, true);
    }

    public String said() {
        return words.getText();
    }

    private Shape shape() {
        return switch (meaning) {
            case ALARM, CAUTION -> Shape.TRIANGLE;
            case EXTREME -> Shape.DOUBLE_TRIANGLE;
            case CALM -> Shape.RING;
            case NEUTRAL, NOTICE -> Shape.SQUARE;
        };
    }
}
