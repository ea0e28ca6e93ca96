package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Level;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Verdict;
import wickbench.reading.FindingWords;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Badge;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What follows from the strip, with its reasons; before that, what is still needed. */
final class VerdictPanel {
    private final Theme theme;
    private final Composite card;

    VerdictPanel(Composite parent, Theme theme) {
        this.theme = theme;
        card = Fit.wide(theme.controls().card(parent, 1));
    }

    Composite control() {
        return card;
    }

    /** Says what must be done before there is a verdict. */
    void waiting(String text) {
        clear();
        theme.controls().label(card, Type.HEADING, BenchUiWords.get("verdict.none"));
        theme.controls().text(card, Type.BODY, text);
        card.requestLayout();
    }

    /** Shows a verdict that is not recorded yet. */
    void show(RecordedReading judged) {
        clear();
        outcome(judged);
        findings(judged.verdict().findings());
        owed(judged.verdict(), "verdict.would-owe");
        card.requestLayout();
    }

    /**
     * Shows what was recorded and what is to be done now.
     *
     * @param toLedger goes to the result, where there is a ledger
     */
    void kept(RecordedReading recorded, String seal, Optional<Runnable> toLedger) {
        clear();
        outcome(recorded);
        theme.controls().text(card, Type.STRONG, seal);
        toLedger.ifPresent(go -> theme.controls().button(card, BenchUiWords.get("kept.show"), go));
        owed(recorded.verdict(), "verdict.owed");
        findings(recorded.verdict().findings());
        card.requestLayout();
    }

    private void outcome(RecordedReading recorded) {
        Verdict verdict = recorded.verdict();
        Fit.wide(new Badge(
                card,
                theme,
                Type.TITLE,
                Mark.of(verdict.outcome(), recorded.reading().sample().dilution())));
        theme.controls()
                .text(
                        card,
                        Type.STRONG,
                        OutcomeWords.sentence(
                                verdict, recorded.reading().sample().dilution()));
        verdict.level().ifPresent(level -> theme.controls().text(card, Type.BODY, words(level)));
    }

    static String words(Level level) {
        String interval = OutcomeWords.level(level);
        return OutcomeWords.probability(level)
                .map(some -> interval + "; " + some)
                .orElse(interval);
    }

    private void findings(List<Finding> findings) {
        if (!findings.isEmpty()) {
            theme.controls().quiet(card, BenchUiWords.get("verdict.findings"));
        }
        findings.forEach(finding -> Fit.wide(new MarkedLine(card, theme, mark(finding), FindingWords.text(finding))));
    }

    private static Mark mark(Finding finding) {
        return Mark.of(finding.severity(), ReadingWords.text(finding.severity()));
    }

    private void owed(Verdict verdict, String heading) {
        List<String> owed = OutcomeWords.owed(verdict);
        theme.controls().quiet(card, BenchUiWords.get(owed.isEmpty() ? "verdict.owes-nothing" : heading));
        owed.forEach(what -> Fit.wide(new MarkedLine(card, theme, new Mark("", Shape.TRIANGLE, Meaning.ALARM), what)));
    }

    private void clear() {
        for (Control old : card.getChildren()) {
            old.dispose();
        }
    }
}
