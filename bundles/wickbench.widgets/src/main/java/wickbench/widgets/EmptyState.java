package wickbench.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What stands where there is nothing yet, or nothing more: what is missing, what to do first, and a button to do it. */
public final class EmptyState extends Composite {
    private static final int READING_WIDTH = 440;
    private final Composite middle;
    private final Theme theme;

    public EmptyState(Composite parent, Theme theme, Glyph glyph, String title, String text) {
        super(parent, SWT.NO_FOCUS);
        this.theme = theme;
        setBackground(parent.getBackground());
        setLayout(new GridLayout());
        middle = theme.controls().box(this, 1);
        middle.setLayoutData(new GridData(SWT.CENTER, SWT.CENTER, true, true));
        center(Names.give(picture(glyph), () -> title), theme.px(56), theme.px(56));
        center(theme.controls().label(middle, Type.HEADING, title), SWT.DEFAULT, SWT.DEFAULT);
        Label words = new Label(middle, SWT.WRAP | SWT.CENTER);
        theme.controls().style(words, Type.BODY).setText(text);
        words.setForeground(theme.color(theme.palette().quiet()));
        center(words, theme.px(READING_WIDTH), SWT.DEFAULT);
    }

    /** Adds the button that does what the words advise. */
    public EmptyState offer(String verb, Runnable act) {
        center(theme.controls().mainButton(middle, verb, act), SWT.DEFAULT, SWT.DEFAULT);
        return this;
    }

    /** Returns an empty state that tells what went wrong, with a button to try again if that makes sense. */
    public static EmptyState failure(Composite parent, Theme theme, String text, Optional<Runnable> again) {
        EmptyState state = new EmptyState(
                parent,
                theme,
                pen -> pen.line(12, 3, 22, 20, 2, 20, 12, 3).line(12, 9, 12, 14).disc(12, 17, 1),
                WidgetWords.get("failure.title"),
                text);
        again.ifPresent(act -> state.offer(WidgetWords.get("failure.again"), act));
        return state;
    }

    private Control picture(Glyph glyph) {
        Canvas canvas = new Canvas(middle, SWT.DOUBLE_BUFFERED);
        canvas.setBackground(getBackground());
        canvas.addListener(
                SWT.Paint,
                event -> Pen.draw(
                        event.gc,
                        glyph,
                        canvas.getClientArea(),
                        theme.color(theme.palette().quiet())));
        return canvas;
    }

    private static void center(Control control, int width, int height) {
        GridData data = new GridData(SWT.CENTER, SWT.CENTER, true, false);
        data.widthHint = width;
        data.heightHint = height;
        control.setLayoutData(data);
    }
}
