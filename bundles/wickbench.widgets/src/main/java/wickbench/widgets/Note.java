package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Words to be minded, with a shape and a wash of their meaning. */
public final class Note extends Composite {
    private final Theme theme;
    private Meaning meaning;
    private final Label words;

    public Note(Composite parent, Theme theme, Meaning meaning, String text) {
        super(parent, SWT.NO_FOCUS);
        this.theme = theme;
        this.meaning = meaning;
        GridLayout layout = new GridLayout(1, false);
        layout.marginLeft = theme.metrics().grid(4);
        layout.marginWidth = theme.metrics().grid(1);
        layout.marginHeight = theme.metrics().grid(1);
        setLayout(layout);
        words = theme.controls().text(this, Type.BODY, text);
        tint();
        addListener(SWT.Paint, event -> {
            int side = theme.px(14);
            ShapePainter.paint(
                    event.gc, theme, shape(), this.meaning, new Rectangle(theme.px(14), theme.px(10), side, side));
        });
    }

    /** Says something else, of another meaning. */
    public void say(Meaning other, String text) {
        meaning = other;
        tint();
        redraw();
        say(text);
    }

    private void tint() {
        setBackground(theme.color(theme.tone(meaning).wash()));
        words.setBackground(getBackground());
        words.setForeground(theme.color(theme.tone(meaning).ink()));
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
