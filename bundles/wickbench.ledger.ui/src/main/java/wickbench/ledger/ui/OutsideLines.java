package wickbench.ledger.ui;

import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.journal.Entry;
import wickbench.ledger.acts.Outside;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Fit;
import wickbench.widgets.Mark;
import wickbench.widgets.MarkedLine;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** What outside laboratories reported, a line each. */
record OutsideLines(Theme theme, SiteTimes times) {

    /** Adds one report. */
    void line(Composite card, Outside report) {
        Mark mark = report.detected()
                ? new Mark(LedgerUiWords.get("outside.detected"), Shape.TRIANGLE, Meaning.ALARM)
                : new Mark(LedgerUiWords.get("outside.not-detected"), Shape.RING, Meaning.CALM);
        Fit.wide(new MarkedLine(card, theme, mark, words(report)));
    }

    private static String words(Outside report) {
        String amount = report.amount()
                .map(each -> " \u00b7 " + each + " \u00b7 "
                        + ReadingWords.text(report.basis().orElseThrow()))
                .orElse("");
        return LedgerUiWords.get("outside.line", report.laboratory(), report.reference(), report.target()) + amount;
    }

    /**
     * Lists many, with what they speak for and when they were issued.
     *
     * @param cases told which case of those because of which a report was asked is to be shown
     */
    void list(Composite parent, List<Entry> reports, Consumer<UUID> cases) {
        Composite card = Fit.wide(theme.controls().card(parent, 1));
        theme.controls().label(card, Type.STRONG, LedgerUiWords.get("outside.reports"));
        if (reports.isEmpty()) {
            theme.controls().text(card, Type.BODY, LedgerUiWords.get("outside.none"));
        }
        reports.forEach(entry -> {
            Outside report = Outside.of(entry).orElseThrow();
            line(card, report);
            String of = report.batch().map(batch -> " \u00b7 " + batch).orElse("");
            theme.controls()
                    .quiet(
                            card,
                            times.minute(report.reported()) + " \u00b7 " + report.sample() + of + " \u00b7 "
                                    + entry.ref());
            report.results()
                    .forEach(result -> theme.controls()
                            .button(card, LedgerUiWords.get("outside.case"), () -> cases.accept(result)));
        });
    }
}
