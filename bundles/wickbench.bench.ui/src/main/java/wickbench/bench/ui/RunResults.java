package wickbench.bench.ui;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Verdict;
import wickbench.bench.run.RunEvent;
import wickbench.reading.OutcomeWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Controls;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What came of each strip of a run, with its repeats and dilutions while the extract is there. */
final class RunResults {
    private final Theme theme;
    private final RunHand hand;
    private final RunTimetable timetable;
    private final RunActs acts;
    private final Consumer<String> refused;
    private final Composite box;

    /** @param refused told why a repeat cannot be had */
    RunResults(
            Composite parent,
            Theme theme,
            RunHand hand,
            RunTimetable timetable,
            RunActs acts,
            Consumer<String> refused) {
        this.theme = theme;
        this.hand = hand;
        this.timetable = timetable;
        this.acts = acts;
        this.refused = refused;
        box = Fit.wide(theme.controls().box(parent, 1));
    }

    Composite control() {
        return box;
    }

    void show(List<Judged> judged) {
        for (Control old : box.getChildren()) {
            old.dispose();
        }
        judged.forEach(this::strip);
        if (judged.isEmpty() && hand.state().isPresent()) {
            theme.controls().text(box, Type.BODY, FlowWords.get("next.none"));
        }
        box.requestLayout();
    }

    private void strip(Judged judged) {
        Composite card = Fit.wide(theme.controls().card(box, 1));
        Composite head = Fit.wide(theme.controls().box(card, 3));
        BigDecimal dilution = judged.reading().reading().sample().dilution();
        Verdict verdict = judged.reading().verdict();
        theme.controls()
                .label(
                        head,
                        Type.HEADING,
                        FlowWords.get(
                                "next.strip",
                                judged.strip().number(),
                                judged.reading().reading().sample().code(),
                                judged.reading().reading().sample().place()));
        new Badge(head, theme, Mark.of(verdict.outcome(), dilution));
        List<String> owed = OutcomeWords.owed(verdict);
        if (owed.isEmpty()) {
            Fit.wide(theme.controls().quiet(head, BenchUiWords.get("verdict.owes-nothing")));
        } else {
            offer(Fit.right(theme.controls().box(head, 3)), judged, verdict);
        }
        if (judged.strip().recorded().isEmpty()) {
            Fit.wide(new MarkedLine(
                    card, theme, new Mark("", Shape.SQUARE, Meaning.NOTICE), FlowWords.get("next.waits")));
        }
        owed.forEach(what -> Fit.wide(new MarkedLine(card, theme, new Mark("", Shape.TRIANGLE, Meaning.ALARM), what)));
    }

    private void offer(Composite buttons, Judged judged, Verdict verdict) {
        Controls controls = theme.controls();
        if (verdict.owed().contains(Owed.REPEAT)) {
            controls.button(buttons, FlowWords.get("next.repeat"), () -> again(judged, BigDecimal.ONE));
        }
        if (verdict.owed().contains(Owed.BRACKET) || verdict.owed().contains(Owed.REPEAT_DILUTED)) {
            controls.button(buttons, FlowWords.get("next.ten"), () -> again(judged, BigDecimal.TEN));
            controls.button(buttons, FlowWords.get("next.hundred"), () -> again(judged, new BigDecimal(100)));
        }
    }

    private void again(Judged judged, BigDecimal thinner) {
        hand.happened(
                new RunEvent.Added(Repeats.of(judged.strip().strip(), thinner)),
                run -> {
                    timetable.replan(Duration.ZERO);
                    acts.go(Stage.CLOCK);
                },
                refused);
    }
}
