package wickbench.bench.ui;

import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.api.method.Method;
import wickbench.bench.run.Moment;
import wickbench.bench.run.StripState;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A strip before its reader: which one it is, where it is in time, and its lines, which are answered here. */
final class StripCard {
    private final Label title;
    private final Badge time;
    private final StripDrawing drawing;

    StripCard(Composite parent, Theme theme) {
        Composite card = theme.controls().card(parent, 1);
        card.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
        title = Fit.wide(theme.controls().label(card, Type.HEADING, ""));
        time = new Badge(card, theme, Type.TITLE, new Mark("", Shape.RING, Meaning.NEUTRAL));
        drawing = lowerIfItMust(new StripDrawing(card, theme, StripSize.LARGE));
    }

    private static StripDrawing lowerIfItMust(StripDrawing drawing) {
        GridData data = new GridData(SWT.LEFT, SWT.FILL, false, true);
        data.minimumHeight = drawing.minimumHeight();
        drawing.setLayoutData(data);
        return drawing;
    }

    /** Shows a strip with every line unanswered; the method knows what is printed beside them. */
    void open(StripState strip, Optional<Method> method) {
        title.setText(FlowWords.get(
                "read.title",
                strip.number(),
                strip.strip().unread().sample().code(),
                strip.strip().unread().sample().place()));
        drawing.strip(
                strip.strip().unread().strip().format(),
                method.map(Method::marks).orElse(Map.of()));
    }

    void tick(StripState strip, Moment now) {
        Mark mark = ReadWords.mark(strip, now);
        if (!mark.equals(time.shown())) {
            time.show(mark);
        }
    }

    StripDrawing drawing() {
        return drawing;
    }
}
