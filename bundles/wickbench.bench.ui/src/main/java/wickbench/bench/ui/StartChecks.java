package wickbench.bench.ui;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What speaks for and against the start of a run, line by line, and whether its alarms will be heard. */
final class StartChecks {
    private final Theme theme;
    private final Composite card;

    StartChecks(Composite parent, Theme theme) {
        this.theme = theme;
        card = Fit.wide(theme.controls().card(parent, 1));
    }

    /** Shows the answers for a run of so many strips. */
    void show(StartCheck check, Optional<Bell.Trouble> silent, int strips) {
        for (Control old : card.getChildren()) {
            old.dispose();
        }
        theme.controls().label(card, Type.HEADING, FlowWords.get("gate.head"));
        check.lines().forEach(line -> Fit.wide(new MarkedLine(card, theme, mark(line), text(line, strips))));
        Mark sound = silent.isPresent()
                ? new Mark(FlowWords.get("gate.caution"), Shape.TRIANGLE, Meaning.CAUTION)
                : new Mark("", Shape.RING, Meaning.CALM);
        Fit.wide(new MarkedLine(
                card,
                theme,
                sound,
                FlowWords.get("sound." + silent.map(Bell.Trouble::code).orElse("there"))));
        // what stands in the way is seen first, also where the plan fills the window
        if (check.refused()) {
            card.moveAbove(null);
        } else {
            card.moveBelow(null);
        }
    }

    private static String text(StartCheck.Line line, int strips) {
        boolean all = line.strips().size() == strips;
        return all ? line.text() : FlowWords.get("gate.of", line.text(), RunTable.numbers(line.strips()));
    }

    private static Mark mark(StartCheck.Line line) {
        return switch (line.word()) {
            case REFUSED -> new Mark(FlowWords.get("gate.refused"), Shape.CROSS, Meaning.ALARM);
            case NOT_CHECKED -> new Mark(FlowWords.get("gate.not-checked"), Shape.SQUARE, Meaning.NOTICE);
            case CAUTION -> new Mark(FlowWords.get("gate.caution"), Shape.TRIANGLE, Meaning.CAUTION);
            case CLEARED -> new Mark("", Shape.RING, Meaning.CALM);
        };
    }
}
