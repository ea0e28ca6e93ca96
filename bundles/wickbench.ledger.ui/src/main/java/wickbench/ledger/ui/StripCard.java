package wickbench.ledger.ui;

import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.profile.Site;
import wickbench.api.reading.Level;
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Strip;
import wickbench.reading.OutcomeWords;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Facts;
import wickbench.widgets.Fit;
import wickbench.widgets.StripDrawing;
import wickbench.widgets.StripSize;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The strip as it was read, and what it says in numbers. */
record StripCard(Composite card, Theme theme, Site site, WhoIsWho people) {
    void fill(RecordedReading recorded) {
        Method method = recorded.method();
        Optional<SecondReading> second = recorded.reading().second();
        Composite row = Fit.wide(theme.controls().box(card, second.isPresent() ? 3 : 2));
        strip(row, method, recorded.reading().strip());
        second.ifPresent(reader -> strip(row, method, reader.strip()));
        Composite words = Fit.wide(theme.controls().box(row, 1));
        Facts lines = new Facts(words, theme);
        Map<LineRole, Seen> seen = recorded.reading().strip().lines();
        method.format()
                .lines()
                .forEach(role -> lines.add(
                        mark(method, role) + ReadingWords.text(role), Type.STRONG, ReadingWords.text(seen.get(role))));
        second.ifPresent(reader -> Fit.wide(theme.controls()
                .text(words, Type.SMALL, LedgerUiWords.get("strip.second", people.name(reader.reader())))));
        recorded.verdict().level().map(site::shown).ifPresent(level -> level(words, level));
    }

    private void strip(Composite row, Method method, Strip strip) {
        StripDrawing drawing = new StripDrawing(row, theme, StripSize.SMALL);
        drawing.strip(method.format(), method.marks());
        drawing.answers(strip.lines());
        drawing.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
    }

    private static String mark(Method method, LineRole role) {
        String printed = method.marks().getOrDefault(role, "");
        return printed.isEmpty() ? "" : printed + "  ";
    }

    private void level(Composite words, Level level) {
        String interval = OutcomeWords.level(level);
        theme.controls()
                .text(
                        words,
                        Type.BODY,
                        OutcomeWords.probability(level)
                                .map(some -> interval + "; " + some)
                                .orElse(interval));
        Fit.wide(new LevelBar(words, theme, level));
    }
}
